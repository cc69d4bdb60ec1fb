import { barePage } from './marks.ts'
import { writeMarks } from './marks-file.ts'
import { packetOf } from './packet-of.ts'

/** Writes a plan's pages as bare marks for the floor, and says in words how many there are. */
export function writePlanMarks(text: string, folder: string, name: string): string {
  const { laid, fonts, bytes } = packetOf(text, {})
  const pages = [...laid.packet.pages].map(page => barePage(page, fonts))
  writeMarks(folder, name, pages, bytes)
  const sum = (of: (page: (typeof pages)[number]) => number) =>
    pages.reduce((total, page) => total + of(page), 0)
  const curves = sum(page => page.paths.reduce((total, one) => total + one.curves.length, 0))
  return `${pages.length} pages, ${sum(page => page.paths.length)} paths of ${curves} steps, ${sum(page => page.texts.length)} texts`
}
