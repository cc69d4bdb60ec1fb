import type { LengthStyle } from '../../length/precision.ts'
import { type Finding, type Place, type Severity, severities } from '../finding.ts'
import { locate } from '../locate.ts'
import { sentence } from '../sentence.ts'
import { visible } from '../visible.ts'
import { byPart } from './by-part.ts'
import { quoteLine } from './quote-line.ts'
import type { Texts } from './texts.ts'

/** What a piece of the report is, for who gives it a colour. */
export type Role = Severity | 'heading' | 'place' | 'quotation' | 'caret'

export type TerminalOptions = {
  readonly texts: Texts
  /** How the sentences show lengths. */
  readonly style: LengthStyle
  /** Colours a piece; nothing is coloured where it is left out. */
  readonly paint?: (role: Role, text: string) => string
}

/**
 * The findings to read on a terminal: by part, errors first, each with its place, its sentence and the line of
 * the plan with a caret; at the end how many there are. Ends with a line feed.
 */
export function terminalReport(findings: readonly Finding[], options: TerminalOptions): string {
  const paint = options.paint ?? ((_, text) => text)
  const lines: string[] = []
  for (const { part, findings: group } of byPart(findings)) {
    lines.push(paint('heading', part === undefined ? 'plan' : visible(part)))
    for (const finding of group) lines.push(...linesOf(finding, { ...options, paint }))
    lines.push('')
  }
  lines.push(counts(findings))
  return `${lines.join('\n')}\n`
}

function linesOf(finding: Finding, { texts, style, paint }: Required<TerminalOptions>): readonly string[] {
  const { severity } = finding
  const [first, ...others] = finding.places
  const at = first && positionOf(first, texts)
  const head = at === undefined ? '' : `${paint('place', at)}: `
  return [
    `  ${head}${paint(severity, severity)}: ${sentence(finding, style)}`,
    ...(first ? quotation(first, texts, paint) : []),
    ...others.flatMap(place => {
      const position = positionOf(place, texts)
      return position === undefined
        ? []
        : [`    see ${paint('place', position)}`, ...quotation(place, texts, paint)]
    }),
  ]
}

/** `cliff.yaml:14:9` */
function positionOf({ source }: Place, texts: Texts): string | undefined {
  if (!source) return undefined
  const text = texts.get(source.file)
  if (text === undefined) return visible(source.file)
  const { line, column } = locate(text, source.from)
  return `${visible(source.file)}:${line}:${column}`
}

function quotation(
  { source }: Place,
  texts: Texts,
  paint: Required<TerminalOptions>['paint'],
): readonly string[] {
  const text = source && texts.get(source.file)
  if (!source || !text) return []
  const { number, text: line, caret } = quoteLine(text, source)
  const margin = String(number)
  return [
    paint('quotation', `    ${margin} | ${line}`),
    `    ${' '.repeat(margin.length)} | ${paint('caret', caret)}`,
  ]
}

function counts(findings: readonly Finding[]): string {
  if (findings.length === 0) return 'nothing found'
  const of = (severity: Severity) => findings.filter(finding => finding.severity === severity).length
  return severities
    .map(severity => ({ severity, count: of(severity) }))
    .filter(({ count }) => count > 0)
    .map(({ severity, count }) => `${count} ${severity}${count === 1 ? '' : 's'}`)
    .join(', ')
}
