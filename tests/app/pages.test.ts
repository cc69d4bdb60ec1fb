import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { printCards } from '../../src/app/cards/print-cards.ts'
import { printPdf } from '../../src/app/print-pdf.ts'
import { printScale } from '../../src/app/print-scale.ts'
import { printSvg } from '../../src/app/print-svg.ts'
import { compareWithGolden } from '../readback/golden.ts'
import { paintPdf, paintSvg, strayInk } from '../readback/raster.ts'
import { surroundings } from './surroundings.ts'

const demo = readFileSync(new URL('../../examples/cliff-railway/cliff-railway.yaml', import.meta.url), 'utf8')

const gate = readFileSync(new URL('../../examples/garden-gate/garden-gate.yaml', import.meta.url), 'utf8')

/** In millimetres, with what the demo has not: mortises, a face edge on top, the reference end at the right. */
const loom = `paperjig: 1
title: Hand loom
units: mm
stock: { beam: { thickness: 22, wood: beech } }
parts:
  cheek:
    from: beam
    size: 150 x 64.5
    face-edge: top
    reference-end: right
    note: Ease the upper edge before the warp goes on.
    corners: { top-left: 20, bottom-right: { chamfer: 12 } }
    cuts:
      - { hole: pivot, at: { left: 24, top: 24 }, diameter: 12.5 }
      - { slot: beam, at: { right: 22, bottom: center }, size: 12 x 40, ends: round, depth: 9 }
      - { row: pegs, at: { left: center, bottom: 9 }, toward: right, spacing: 16, count: 5, diameter: 4, depth: 10 }
      - { notch: rest, on: top, at: { left: center }, size: 30 x 10 }
      - { hole: stay, on: left, at: center, diameter: 6, depth: 20 }
      - { hole: tie, at: { left: 60 }, diameter: 3 }
`

/** A newel post of a pier's stair: leaning and widened holes on four faces, and as it was measured. */
const post = `paperjig: 1
title: Pier stair
units: mm
parts:
  newel:
    size: 110 x 40 x 32
    wrap: net
    measured: 110.4 x 39.7 x 32.2
    cuts:
      - { hole: brace, at: { left: 30, bottom: center }, diameter: 8, depth: 20, lean: { toward: right, angle: 25 } }
      - { hole: bolt, at: { right: 24, bottom: center }, diameter: 6, counterbore: 14 x 5 }
      - { row: balusters, on: top, at: { left: center, front: center }, toward: right, spacing: 18, count: 3, diameter: 5, depth: 9 }
      - { hole: stud, on: bottom, at: { left: 52, back: 8 }, diameter: 4, depth: 10, countersink: 8 }
      - { hole: tenon, on: right, at: center, diameter: 10, depth: 14 }
`

/** Circles of holes of two sizes about an axle. */
const dobby = `paperjig: 1
title: Loom dobby
units: mm
parts:
  disc:
    round: 120
    thickness: 18
    cuts:
      - { hole: axle, at: center, diameter: 10 }
      - { hole-circle: pegs, at: center, circle: 90, count: 12, diameter: 6 }
      - { hole-circle: pins, at: center, circle: 50, count: 8, diameter: 4 }
`

/** Without the cover. */
const templates = { sheets: ['template'] } as const
const markOuts = { sheets: ['mark-out'] } as const

const cases = [
  [
    'a-template-of-a-mirrored-piece-in-inches',
    demo,
    { ...templates, paper: 'letter', parts: ['side-frame'] },
    0,
  ],
  [
    'a-small-part-says-in-words-what-found-no-room',
    demo,
    { ...templates, paper: 'letter', parts: ['bench-end'] },
    0,
  ],
  [
    'a-tapered-outline-with-a-cut-out-and-its-entry-hole',
    demo,
    { ...templates, paper: 'letter', parts: ['under-frame'] },
    0,
  ],
  ['discs-with-a-circle-of-holes', demo, { ...templates, paper: 'letter', parts: ['wheel'] }, 0],
  ['the-cover-says-what-to-settle-first', demo, { paper: 'letter', sheets: ['cover'] }, 0],
  [
    'small-parts-share-a-page',
    demo,
    { ...templates, paper: 'letter', parts: ['bench-end', 'eaves-bracket', 'step', 'name-board'] },
    0,
  ],
  ['an-arched-rail-over-two-pages', gate, { ...templates, paper: 'a4', parts: ['arched-rail'] }, 0],
  ['a-wide-part-lies-on-its-page', demo, { ...templates, paper: 'letter', parts: ['roof'] }, 0],
  ['a-template-in-millimetres-on-a4', loom, { ...templates, paper: 'a4' }, 0],
  [
    'a-mark-out-in-third-angle-with-a-size-that-matches-the-other-hand',
    demo,
    { ...markOuts, paper: 'letter', parts: ['side-frame'] },
    0,
  ],
  [
    'a-mark-out-measured-from-its-centre-lines',
    demo,
    { ...markOuts, paper: 'letter', parts: ['bolster'] },
    0,
  ],
  [
    'a-reduced-mark-out-in-first-angle',
    loom.replace('units: mm', 'units: mm\nprojection: first'),
    { ...markOuts, paper: 'a5' },
    0,
  ],
  [
    'views-that-share-no-page-stand-on-two',
    demo,
    { ...markOuts, paper: 'letter', parts: ['winding-block'] },
    0,
  ],
  ['letters-outside-circles-of-holes', dobby, { ...templates, paper: 'a4' }, 0],
  ['a-drill-strip-for-both-hands', demo, { sheets: ['strip'], paper: 'letter', parts: ['side-frame'] }, 0],
  [
    'a-drill-strip-in-millimetres-with-the-reference-end-at-the-right',
    loom,
    { sheets: ['strip'], paper: 'a4' },
    0,
  ],
  ['a-panel-for-each-face-of-a-block', demo, { sheets: ['wrap'], paper: 'a4', parts: ['winding-block'] }, 0],
  ['a-net-to-fold-round-a-measured-block', post, { sheets: ['wrap'], paper: 'a4' }, 0],
  ['leaning-holes-on-a-template', post, { ...templates, paper: 'a4' }, 0],
] as const

test.each(cases)('golden: %s', async (name, text, choices, page) => {
  const { pdf } = await printPdf({ text, file: 'plan.yaml' }, choices, surroundings)
  compareWithGolden(name, (await paintPdf(pdf!))[page]!)
})

test.each([
  ['the-scale-sheet-on-letter-in-inches', 'letter', 'inch'],
  ['the-scale-sheet-on-a4-in-millimetres', 'a4', 'mm'],
] as const)('golden: %s', async (name, paper, unit) => {
  const { pdf } = await printScale({ paper }, unit, surroundings)
  compareWithGolden(name, (await paintPdf(pdf!))[0]!)
})

test.each([
  ['a-blank-part-card', undefined, { perPage: 1, count: 1, paper: 'letter' }],
  ['two-part-cards-with-what-is-known', demo, { perPage: 2, count: 1, parts: ['side-frame', 'wheel'] }],
] as const)('golden: %s', async (name, text, choices) => {
  const plan = text === undefined ? undefined : { text, file: 'plan.yaml' }
  const { pdf } = await printCards(plan, choices, surroundings)
  compareWithGolden(name, (await paintPdf(pdf!))[0]!)
})

/** Ten pixels to the millimetre, so that the page has whole pixels in both engines and a line's place is seen to 0.1 mm. */
const fine = 254

test.each(cases)(
  '%s: the PDF and the SVG, painted by two engines, have their ink at the same places',
  async (_, text, choices, page) => {
    const { pdf } = await printPdf({ text, file: 'plan.yaml' }, choices, surroundings)
    const { files } = printSvg({ text, file: 'plan.yaml' }, choices, surroundings)
    const svg = paintSvg(new TextDecoder().decode(files[page]!.bytes), fine)
    expect(strayInk((await paintPdf(pdf!, fine))[page]!, svg)).toBe(0)
  },
)
