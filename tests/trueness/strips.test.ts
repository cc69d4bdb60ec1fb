import { expect, test } from 'vitest'
import { layOutPacket } from '../../src/app/lay-out-packet.ts'
import { openFonts } from '../../src/app/open-fonts.ts'
import { printPdf } from '../../src/app/print-pdf.ts'
import { printSvg } from '../../src/app/print-svg.ts'
import { readModel } from '../../src/app/read-model.ts'
import { printable } from '../../src/number/tolerance.ts'
import { defaultWorkshop } from '../../src/workshop/defaults.ts'
import { surroundings } from '../app/surroundings.ts'
import { moved, type ReadBack, type ReadChain } from '../readback/read-back.ts'
import { readPdf } from '../readback/read-pdf.ts'
import { readSvg } from '../readback/read-svg.ts'
import { perfect, type Trueness, worse } from './compare.ts'
import { compareStrip, exactStrip } from './exact-paper.ts'
import { areaOf, sixOf, within } from './on-page.ts'
import { papersToMeasure, plansToMeasure } from './plans.ts'

/** The pages of a plan's strips as they are read back from both formats. */
async function readStrips(text: string, paper: string) {
  const input = { text, file: 'plan.yaml' }
  const { model, findings, style } = readModel(input)
  if (model === undefined) throw new Error('no model')
  const choices = { paper, sheets: ['strip'] }
  const before = { findings, style, workshop: defaultWorkshop }
  const pages = [
    ...layOutPacket(model, choices, openFonts(surroundings.fonts), undefined, before).packet.pages,
  ]
  const { pdf } = await printPdf(input, choices, surroundings)
  const { files } = printSvg(input, choices, surroundings)
  const svg = files
    .filter(({ name }) => name.startsWith('page-'))
    .map(({ bytes }) => readSvg(new TextDecoder().decode(bytes)))
  return { model, pages, formats: pdf === undefined ? [] : [await readPdf(pdf), svg] }
}

const cases = plansToMeasure().flatMap(plan => papersToMeasure.map(paper => ({ ...plan, paper })))

test.each(cases)(
  'the strips of $name on $paper have their centres, fold and ruler within 0.005 mm',
  async ({ text, paper }) => {
    const { model, pages, formats } = await readStrips(text, paper)
    for (const read of formats) {
      let found: Trueness = perfect
      pages.forEach((page, i) => {
        for (const placed of page.placed) {
          const part = model.parts.find(({ id }) => placed.drawing.id.startsWith(`${id}-strip-`))
          const exact = part && exactStrip(part, placed.drawing.id)
          // a tile or the words beside it
          if (exact === undefined) continue
          found = worse(found, compareStrip(exact, sixOf(placed), within(areaOf(placed), read[i]!)))
        }
      })
      for (const deviation of Object.values(found)) expect(deviation).toBeLessThan(printable)
    }
  },
)

const rail = `paperjig: 1
title: Pier
units: inch
parts:
  rail:
    size: 36 x 1 1/2 x 3/4
    cuts:
      - { row: balusters, on: top, at: { left: 1 1/8, front: center }, toward: right, spacing: 2 5/64, count: 17, diameter: 1/4, depth: 1/2 }
`

type Spot = { readonly x: number; readonly y: number }

/** The middles of the closed lines of a page that are as large as `size`: rings, or the diamonds of match marks. */
function middles({ chains }: ReadBack, size: number, kind: 'line' | 'curve'): readonly Spot[] {
  return chains.flatMap((chain: ReadChain): readonly Spot[] => {
    if (!chain.closed || chain.paint !== 'stroke' || chain.dashes.length > 0) return []
    if (chain.curves.some(curve => curve.kind !== kind)) return []
    const points = chain.curves.flatMap(({ at }) => [at(0), at(0.5), at(1)])
    const [xs, ys] = [points.map(p => p.x), points.map(p => p.y)]
    const box = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)] as const
    if (Math.abs(box[1] - box[0] - size) > 0.1 || Math.abs(box[3] - box[2] - size) > 0.1) return []
    return [{ x: (box[0] + box[1]) / 2, y: (box[2] + box[3]) / 2 }]
  })
}

/** Of a match mark, from corner to corner. */
const diamond = 7

test.each(['letter', 'a4'])(
  'a strip over several pages of %s, joined at its match marks, keeps every running distance within 0.005 mm',
  async paper => {
    const { pages, formats } = await readStrips(rail, paper)
    const tiles = pages.flatMap(({ placed }, i) =>
      placed.flatMap(one => (/-tile-\d+$/.test(one.drawing.id) ? [{ page: i, six: sixOf(one) }] : [])),
    )
    expect(tiles.length).toBeGreaterThan(2)
    for (const read of formats) {
      // the strip runs along the page or across it; on all pages alike
      const [a, b] = tiles[0]!.six
      const axis = Math.abs(a) > Math.abs(b) ? 'x' : 'y'
      const other = axis === 'x' ? 'y' : 'x'
      const sign = Math.sign(
        moved(tiles[0]!.six, { x: 1, y: 0 })[axis] - moved(tiles[0]!.six, { x: 0, y: 0 })[axis],
      )
      const joined: Spot[] = []
      let shift = { x: 0, y: 0 }
      let before: readonly Spot[] = []
      for (const { page } of tiles) {
        const marks = middles(read[page]!, diamond, 'line')
        expect(marks.length).toBeGreaterThan(0)
        if (before.length > 0) {
          // the marks at the seam before, as this page has them: the same number, the nearest to its beginning
          const here = marks.toSorted((p, q) => sign * (p[axis] - q[axis])).slice(0, before.length)
          const [from, to] = [before, here].map(spots => spots.toSorted((p, q) => p[other] - q[other])[0]!)
          shift = { x: from!.x - to!.x, y: from!.y - to!.y }
        }
        const place = ({ x, y }: Spot): Spot => ({ x: x + shift.x, y: y + shift.y })
        joined.push(...middles(read[page]!, 6.35, 'curve').map(place))
        const last = marks.toSorted((p, q) => sign * (q[axis] - p[axis]))
        before = last.filter(mark => Math.abs(mark[axis] - last[0]![axis]) < 1).map(place)
      }
      const sorted = joined.toSorted((p, q) => sign * (p[axis] - q[axis]))
      // what two pages both show lies at one place
      const apart = sorted.filter((spot, i) => i === 0 || Math.abs(spot[axis] - sorted[i - 1]![axis]) > 1)
      expect(apart).toHaveLength(17)
      apart.forEach((spot, i) => {
        expect(Math.abs(sign * (spot[axis] - apart[0]![axis]) - i * (2 + 5 / 64) * 25.4)).toBeLessThan(
          printable,
        )
      })
    }
  },
)

test('the comparison sees a strip that is printed a hundredth of a millimetre aside, or a thousandth too long', async () => {
  const text = rail.replace('36 x', '6 x').replace('count: 17', 'count: 3')
  const { model, pages, formats } = await readStrips(text, 'letter')
  const exact = exactStrip(model.parts[0]!, 'rail-strip-1')!
  const placed = pages[0]!.placed[0]!
  const read = within(areaOf(placed), formats[0]![0]!)
  const off = (bend: (p: Spot) => Spot): Trueness =>
    compareStrip(exact, sixOf(placed), {
      ...read,
      chains: read.chains.map(chain => ({
        ...chain,
        curves: chain.curves.map(({ kind, at }) => ({ kind, at: (t: number) => bend(at(t)) })),
      })),
    })
  expect(Math.max(...Object.values(off(p => p)))).toBeLessThan(printable)
  expect(off(p => ({ x: p.x + 0.01, y: p.y + 0.01 })).centre).toBeCloseTo(0.01 * Math.SQRT2, 3)
  const long = off(p => ({ x: p.x * 1.001, y: p.y * 1.001 }))
  expect(long.bars).toBeGreaterThan(0.1)
})
