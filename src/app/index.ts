/**
 * Paperjig as pure functions: a plan's text, choices and font bytes in; the bytes of files and what was found out.
 * Nothing here touches a file, a clock or the process, so all of it runs in a browser too. Findings are data;
 * {@link terminalReport} and {@link jsonReport} make texts of them. Lengths are millimetres.
 *
 * @module paperjig
 */

export type { Finding, Place, Severity } from '../finding/finding.ts'
export { type JsonReport, jsonReport, jsonText } from '../finding/report/json.ts'
export { type TerminalOptions, terminalReport } from '../finding/report/terminal.ts'
export type { Printer } from '../paper/printer/printer.ts'
export { readPrinters, withPrinter, writePrinters } from '../paper/printer/printer-file.ts'
export { maxBytes as maxPlanBytes } from '../yaml/limits.ts'
export { type CardChoices, printCards } from './cards/print-cards.ts'
export { printableSheets } from './choose-sheets.ts'
export { type ExplainedRule, explainRule } from './explain-rule.ts'
export type { Found } from './found.ts'
export type {
  Choices,
  FontBytes,
  NamedBytes,
  PlanText,
  Progress,
  Surroundings,
  SvgChoices,
} from './inputs.ts'
export { knownPrinter } from './known-printer.ts'
export { measuredPrinter, type TypedReadings } from './measured-printer.ts'
export { type NewPlan, newPlan, titleFromFileName, usualPlan } from './new-plan.ts'
export { planSchemaText } from './plan-schema-text.ts'
export { type PrintedPdf, printPdf } from './print-pdf.ts'
export { type PrintedScale, printScale } from './print-scale.ts'
export { type PrintedSvg, printSvg } from './print-svg.ts'
export { type ReadJob, readJob } from './read-job.ts'
export { type ReadModel, readModel, usualStyle } from './read-model.ts'
export { type ReadShop, readShop } from './read-shop.ts'
export { type ShownShop, showShop } from './show-shop.ts'
