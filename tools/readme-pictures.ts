/**
 * Makes the pictures in README.md from the demo's own PDF: `npm run pictures`. A reader so sees what comes out, and
 * not what somebody drew.
 */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { paintPdf, writePng } from '../tests/readback/raster.ts'

const root = fileURLToPath(new URL('../', import.meta.url))

/** Page of the demo packet, and the picture's name. */
const pictures = [
  { page: 1, name: 'cover' },
  { page: 3, name: 'templates-of-a-pair' },
  { page: 6, name: 'small-parts-share-a-page' },
] as const

/** Small enough for a web page, large enough to read. */
const dotsPerInch = 90

const pages = await paintPdf(readFileSync(`${root}out/cliff-railway.pdf`), dotsPerInch)
mkdirSync(`${root}docs/pictures`, { recursive: true })
for (const { page, name } of pictures) {
  const picture = pages[page - 1]
  if (picture === undefined) throw new Error(`the demo has no page ${page}; print it first: npm start`)
  writeFileSync(`${root}docs/pictures/${name}.png`, writePng(picture))
  console.log(`docs/pictures/${name}.png: page ${page}`)
}
