import type { Packet } from '../../drawing/page.ts'
import type { Fonts } from '../../text/fonts.ts'
import { bookmarks } from './bookmarks.ts'
import { ByteSink } from './byte-sink.ts'
import { openDocument } from './document.ts'
import { layers } from './layers.ts'
import { lettering } from './lettering.ts'
import { type Pack, packContent } from './pack-content.ts'
import { pageContent, pointsPerMm } from './page-content.ts'
import { pageLabels } from './page-labels.ts'
import { tags } from './tags.ts'

/** The longest side of a page that PDF readers must accept: 14,400 points (ISO 32000-1, annex C). */
export const longestPdfSide = 5080

/**
 * A packet as one PDF file. Pages are taken, written and let go one at a time. Arcs become cubic curves of at
 * most 30°; everything else is in the file as it is on the page. The file has a list of contents, the pages' own
 * names, layers to hide, and words for those who have it read aloud. The same packet, fonts and version give the
 * same bytes.
 *
 * @param version of the program, for the file's "producer"
 * @param pack packs a page while the next one is drawn; without it every page waits for that, and the bytes are the
 *   same where both pack alike
 * @throws RangeError when a page has no size or a side longer than {@link longestPdfSide}, or a number on it
 *   is not finite
 */
export async function renderPdf(
  packet: Packet,
  fonts: Fonts,
  version: string,
  pack?: Pack,
): Promise<Uint8Array> {
  const { document, written } = await openDocument(packet, `Paperjig ${version}`)
  const writers = {
    lettering: lettering(document, fonts),
    layers: layers(document),
    operators: new ByteSink(),
  }
  const [contents, labels, structure] = [bookmarks(document), pageLabels(document), tags(document)]
  let endPageBefore = async (): Promise<void> => undefined
  for (const page of packet.pages) {
    const { width, height } = page.paper
    if (!(width > 0 && height > 0 && Math.max(width, height) <= longestPdfSide)) {
      throw new RangeError(`a PDF cannot have a page of ${width} x ${height} mm`)
    }
    document.addPage({ size: [inPoints(width), inPoints(height)], margin: 0 })
    contents.add(page)
    labels.add(page)
    const section = structure.page()
    document.addContent(pageContent(page, document.page.height, writers, section))
    await endPageBefore()
    document.endWaiting()
    section.finish()
    if (pack !== undefined) endPageBefore = packContent(document, pack)
  }
  await endPageBefore()
  for (const part of [writers.lettering, writers.layers, labels, structure]) part.finish()
  document.end()
  return written.bytes()
}

/** Six places are what the library writes; the page's own matrix must start from the same number. */
function inPoints(mm: number): number {
  return Math.round(mm * pointsPerMm * 1e6) / 1e6
}
