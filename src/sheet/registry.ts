import { markOutSheets } from './mark-out/mark-out.ts'
import type { Sheet, SheetContext, SheetMaker } from './sheet.ts'
import { templateSheets, templatesFor } from './template/template.ts'

/** One line a kind of sheet, in the order in which a packet is bound. */
const makers = {
  template: templateSheets,
  'mark-out': markOutSheets,
} as const satisfies Readonly<Record<string, SheetMaker>>

export type SheetKind = keyof typeof makers

export const sheetKinds = Object.keys(makers) as readonly SheetKind[]

/**
 * The sheets of these kinds. A part gets a template or a mark-out as suits it; where only one of the two is wanted, every part
 * gets that.
 */
export function makeSheets(
  context: SheetContext,
  kinds: readonly SheetKind[] = sheetKinds,
): readonly Sheet[] {
  const transfers = (['template', 'mark-out'] as const).filter(kind => kinds.includes(kind))
  const only = transfers.length === 1 ? { everyPart: transfers[0]! } : {}
  return kinds.flatMap(kind => makers[kind]({ ...context, ...only }))
}

/** Templates of all parts where these kinds show their shapes at all, for the files that machines cut by. */
export function shapesFor(context: SheetContext, kinds: readonly SheetKind[]): readonly Sheet[] {
  const shown = kinds.includes('template') || kinds.includes('mark-out')
  return shown ? context.model.parts.flatMap(part => templatesFor(part, context)) : []
}
