import type { Sheet, SheetContext, SheetMaker } from './sheet.ts'
import { stripSheets } from './strip/strip.ts'
import { templateSheets } from './template/template.ts'

/** One line a kind of sheet, in the order in which the papers of a part are bound. */
const makers = {
  template: templateSheets,
  strip: stripSheets,
} as const satisfies Readonly<Record<string, SheetMaker>>

export type SheetKind = keyof typeof makers

export const sheetKinds = Object.keys(makers) as readonly SheetKind[]

/** The sheets of these kinds, part by part: all the papers of a part stand together. */
export function makeSheets(
  context: SheetContext,
  kinds: readonly SheetKind[] = sheetKinds,
): readonly Sheet[] {
  const sheets = kinds.flatMap(kind => makers[kind](context))
  const place = new Map(context.model.parts.map(({ id }, i) => [id, i]))
  return sheets.toSorted((a, b) => place.get(a.part)! - place.get(b.part)!)
}
