import { writeFileSync } from 'node:fs'
import { layOutPacket } from '../../src/app/lay-out-packet.ts'
import { openFonts } from '../../src/app/open-fonts.ts'
import { readModel } from '../../src/app/read-model.ts'
import { readFonts } from '../../src/cli/input/read-fonts.ts'
import { barePage } from './marks.ts'

/** Writes a plan's pages into a folder as bare marks for the floor, and says in words how many there are. */
export function writeMarks(text: string | Uint8Array, folder: string, name: string): string {
  const bytes = readFonts()
  const fonts = openFonts(bytes)
  const { model } = readModel({ text, file: `${name}.yaml` })
  if (model === undefined) throw new Error(`${name} is no plan`)
  const pages = [...layOutPacket(model, {}, fonts, undefined).packet.pages].map(page => barePage(page, fonts))
  // unpacked, as print has them: the floor is not slowed down by unpacking them with a library of its own
  const file = (weight: 'regular' | 'bold') => {
    const font = `${folder}/${weight}.ttf`
    writeFileSync(font, bytes[weight][0]!)
    return font
  }
  const marks = { fonts: { regular: file('regular'), bold: file('bold') }, pages }
  writeFileSync(`${folder}/${name}.json`, JSON.stringify(marks))
  const sum = (of: (page: (typeof pages)[number]) => number) =>
    pages.reduce((total, page) => total + of(page), 0)
  const curves = sum(page => page.paths.reduce((total, one) => total + one.curves.length, 0))
  return `${pages.length} pages, ${sum(page => page.paths.length)} paths of ${curves} steps, ${sum(page => page.texts.length)} texts`
}
