import type { Page } from '../../drawing/page.ts'
import { legible } from '../../text/shown.ts'
import type { PdfDocument } from './document.ts'
import { textString } from './text-string.ts'

/** What a viewer calls the pages, so that its "page 3" is the page that says so. */
export type PageLabels = {
  readonly add: (page: Page) => void
  readonly finish: () => void
}

/**
 * Numbers of pages go into the file as ranges, each from the page where counting does not just go on; a page with a
 * label is a range of its own (ISO 32000-1, 12.4.2).
 */
export function pageLabels(document: PdfDocument): PageLabels {
  const ranges: unknown[] = []
  let index = 0
  let next: number | undefined
  return {
    add: ({ number, label }) => {
      if (label !== undefined) ranges.push(index, { P: textString(legible(label)) })
      else if (number !== next) ranges.push(index, { S: 'D', St: number })
      next = label === undefined ? number + 1 : undefined
      index++
    },
    finish: () => {
      if (index > 0) document._root.data.PageLabels = { Nums: ranges }
    },
  }
}
