import type { Part } from '../model/part.ts'
import type { SheetContext } from './sheet.ts'

/** What was found wrong with a part, for the title of its papers: one error in its own words, several as their number. */
export function errorWords({ id }: Pick<Part, 'id'>, { errors }: SheetContext): readonly string[] {
  const [first, ...more] = errors?.get(id) ?? []
  if (first === undefined) return []
  return [
    more.length === 0 ? `error: ${first}` : `${more.length + 1} errors: settle them before anything is cut`,
  ]
}
