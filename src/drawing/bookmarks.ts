import { sheetInWords } from './in-words.ts'
import type { Bookmark, Page } from './page.ts'

/** The entries that lead to a page: its own, or one for each drawing on it, under the part that it shows. */
export function bookmarksOf(page: Page): readonly Bookmark[] {
  return (
    page.bookmarks ??
    page.placed.map(({ drawing: { caption } }): Bookmark => {
      const sheet = sheetInWords(caption)
      return caption.part === undefined ? [sheet] : [caption.part, sheet]
    })
  )
}
