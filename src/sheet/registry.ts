import type { Sheet, SheetContext, SheetMaker } from './sheet.ts'
import { templateSheets } from './template/template.ts'

/** One line a kind of sheet, in the order in which a packet is bound. */
const makers = {
  template: templateSheets,
} as const satisfies Readonly<Record<string, SheetMaker>>

export type SheetKind = keyof typeof makers

export function makeSheets(
  context: SheetContext,
  kinds = Object.keys(makers) as readonly SheetKind[],
): readonly Sheet[] {
  return kinds.flatMap(kind => makers[kind](context))
}
