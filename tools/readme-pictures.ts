/**
 * Makes the pictures in README.md from the demo's own PDF: `npm run pictures`. A reader so sees what comes out, and
 * not what somebody drew.
 */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { paintPdf, writePng } from '../tests/readback/raster.ts'
import { packetOf } from './bench/packet-of.ts'

const root = fileURLToPath(new URL('../', import.meta.url))

/** A picture's name, and how the drawings are called that its page shows: the page that most of that name stand on. */
const pictures = [
  { name: 'cover', shows: 'cover' },
  { name: 'mark-out', shows: 'side-frame-mark-out' },
  { name: 'templates-of-a-pair', shows: 'under-frame-template' },
  { name: 'drill-strip', shows: 'side-frame-strip' },
  { name: 'wrap', shows: 'winding-block-wrap' },
  { name: 'small-parts-share-a-page', shows: 'eaves-bracket-template' },
] as const

/** Small enough for a web page, large enough to read. */
const dotsPerInch = 90

const { laid } = packetOf(readFileSync(`${root}examples/cliff-railway/cliff-railway.yaml`, 'utf8'), {})
const shown = [...laid.packet.pages].map(({ placed }) => placed.map(({ drawing }) => drawing.id))
const pages = await paintPdf(readFileSync(`${root}out/cliff-railway.pdf`), dotsPerInch)
if (pages.length !== shown.length) throw new Error('out/cliff-railway.pdf is not of today: npm start')

mkdirSync(`${root}docs/pictures`, { recursive: true })
for (const { name, shows } of pictures) {
  const counts = shown.map(ids => ids.filter(id => id.startsWith(shows)).length)
  const page = Math.max(...counts) === 0 ? -1 : counts.indexOf(Math.max(...counts))
  const picture = pages[page]
  if (picture === undefined) throw new Error(`no page of the demo shows ${shows}`)
  writeFileSync(`${root}docs/pictures/${name}.png`, writePng(picture))
  console.log(`docs/pictures/${name}.png: page ${page + 1}`)
}
