import { markOutSheets } from './mark-out/mark-out.ts'
import type { Sheet, SheetContext, SheetMaker } from './sheet.ts'
import { stripSheets } from './strip/strip.ts'
import { templateSheets, templatesFor } from './template/template.ts'
import { wrapSheets } from './wrap/wrap.ts'

/** One line a kind of sheet, in the order in which the papers of a part are bound. */
const makers = {
  template: templateSheets,
  'mark-out': markOutSheets,
  strip: stripSheets,
  wrap: wrapSheets,
} as const satisfies Readonly<Record<string, SheetMaker>>

export type SheetKind = keyof typeof makers

export const sheetKinds = Object.keys(makers) as readonly SheetKind[]

/**
 * The sheets of these kinds, part by part: all the papers of a part stand together. A part gets a template or a mark-out as suits it; where only one of the two is wanted, every part
 * gets that.
 */
export function makeSheets(
  context: SheetContext,
  kinds: readonly SheetKind[] = sheetKinds,
): readonly Sheet[] {
  const transfers = (['template', 'mark-out'] as const).filter(kind => kinds.includes(kind))
  const only = transfers.length === 1 ? { everyPart: transfers[0]! } : {}
  const sheets = kinds.flatMap(kind => makers[kind]({ ...context, ...only }))
  const place = new Map(context.model.parts.map(({ id }, i) => [id, i]))
  return sheets.toSorted((a, b) => place.get(a.part)! - place.get(b.part)!)
}

/** Templates of all parts where these kinds show their shapes at all, for the files that machines cut by. */
export function shapesFor(context: SheetContext, kinds: readonly SheetKind[]): readonly Sheet[] {
  const shown = kinds.includes('template') || kinds.includes('mark-out')
  return shown ? context.model.parts.flatMap(part => templatesFor(part, context)) : []
}
