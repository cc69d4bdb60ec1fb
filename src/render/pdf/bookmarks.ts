import { bookmarksOf } from '../../drawing/bookmarks.ts'
import type { Bookmark, Page } from '../../drawing/page.ts'
import { legible } from '../../text/shown.ts'
import type { OutlineItem, PdfDocument } from './document.ts'

/** The list of contents that a viewer shows beside the pages. */
export type Bookmarks = {
  /** Enters what the document's last page has; an entry leads to the first page that has it. */
  readonly add: (page: Page) => void
}

type Entry = { readonly item: OutlineItem; readonly under: Map<string, Entry> }

/** Shows the whole page: a zoomed one looks like one to be scaled. */
const wholePage = { fit: true, expanded: false } as const

export function bookmarks(document: PdfDocument): Bookmarks {
  const top: Entry = { item: document.outline, under: new Map() }
  const enter = (path: Bookmark): void => {
    let heading = top
    for (const title of path) {
      let entry = heading.under.get(title)
      if (entry === undefined) {
        entry = { item: heading.item.addItem(legible(title), wholePage), under: new Map() }
        heading.under.set(title, entry)
      }
      heading = entry
    }
  }
  return { add: page => bookmarksOf(page).forEach(enter) }
}
