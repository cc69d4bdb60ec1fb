import type { Sheet, SheetContext, SheetMaker } from './sheet.ts'
import { templateSheets } from './template/template.ts'

/** One line a kind of sheet, in the order in which a packet is bound. */
const makers = {
  template: templateSheets,
} as const satisfies Readonly<Record<string, SheetMaker>>

export type SheetKind = keyof typeof makers

export const sheetKinds = Object.keys(makers) as readonly SheetKind[]

export function makeSheets(
  context: SheetContext,
  kinds: readonly SheetKind[] = sheetKinds,
): readonly Sheet[] {
  return kinds.flatMap(kind => makers[kind](context))
}
