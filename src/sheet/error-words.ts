import type { Part } from '../model/part.ts'
import { numberedErrors } from './error-signs.ts'
import type { SheetContext } from './sheet.ts'

/** A sentence longer than this, in letters, would push the paper's own words away; the cover has it whole. */
const longest = 100
/** More lines than this say less than the cover does. */
const mostLines = 4

/**
 * What was found wrong with a part, for the title of its papers: one short error in its own words, else how many; then
 * what each sign means that is marked on this paper.
 */
export function errorWords(
  part: Pick<Part, 'id'>,
  context: Pick<SheetContext, 'errors'>,
  marked: readonly number[] = [],
): readonly string[] {
  const errors = context.errors?.get(part.id) ?? []
  const [first, ...more] = errors
  if (first === undefined) return []
  const signs = numberedErrors(part, context).filter(({ number }) => marked.includes(number))
  if (more.length === 0) {
    const sign = signs.length > 0 ? ', marked !1' : ''
    if (first.words.length > longest) return [`an error${sign}: settle it before anything is cut`]
    return [`error${sign}: ${first.words}`]
  }
  const all = `${errors.length} errors: settle them before anything is cut`
  const lines = signs.slice(0, mostLines).map(({ number, words, features }) => {
    const short = words.length <= longest ? words : features.join(' and ')
    return `!${number}: ${short}`
  })
  return [all, ...lines]
}
