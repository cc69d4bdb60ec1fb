import type { Part } from '../model/part.ts'
import type { SheetContext } from './sheet.ts'

/** A sentence longer than this, in letters, would push the paper's own words away; the cover has it whole. */
const longest = 100

/** What was found wrong with a part, for the title of its papers: one short error in its own words, else how many. */
export function errorWords({ id }: Pick<Part, 'id'>, { errors }: SheetContext): readonly string[] {
  const [first, ...more] = errors?.get(id) ?? []
  if (first === undefined) return []
  if (more.length > 0) return [`${more.length + 1} errors: settle them before anything is cut`]
  return [first.length <= longest ? `error: ${first}` : 'an error: settle it before anything is cut']
}
