import { expect, test } from 'vitest'
import { markBounds } from '../../../src/drawing/mark-bounds.ts'
import { sharedArea } from '../../../src/geometry/measure/bounds.ts'
import { fillPages, usualOverlap } from '../../../src/paper/fill-pages.ts'
import { papers } from '../../../src/paper/papers.ts'
import { plain } from '../../../src/text/words.ts'
import { defaultWorkshop } from '../../../src/workshop/defaults.ts'
import { fonts, papersOf, textsOf } from '../../sheet/sheets-of.ts'

/** A deck whose strips are longer than the paper, their words side by side as long as the wood. */
const deck = (part: string) => `paperjig: 1
title: Pier with a landing stage
units: inch
parts:
  ${part}:
    size: 10 1/8 x 7 3/8 x 3/8
    cuts:
      - { grid: planking, at: { left: 1/2, bottom: 1 3/4 }, spacing: 1 1/8 x 1 1/4, count: 8 x 4, diameter: 1/16 }
      - { row: left-rail, at: { left: 1/4, top: 3/4 }, toward: bottom, spacing: 47/64, count: 6, diameter: 5/64 }
`

test.each(
  ['deck-plate', 'deck-plate-of-the-landing-stage-and-its-windlass'].flatMap(part =>
    (['letter', 'a4', 'a5'] as const).map(paper => [part, paper] as const),
  ),
)(
  'the tiles of the strips of %s on %s show all lettering, and no word on another or under a match mark',
  (part, paper) => {
    const sheets = papersOf(deck(part), 'strip').map(sheet => ({ ...sheet, group: sheet.part }))
    const { large } = fillPages(sheets, papers[paper], defaultWorkshop, usualOverlap, fonts)
    expect(large).not.toEqual([])
    for (const { drawing, tiles } of large) {
      const shown = new Set(tiles.flatMap(({ marks }) => textsOf(marks).map(({ words }) => plain(words))))
      // a line too long for a tile stands there in pieces
      const all = new Set([...shown].flatMap(line => [line, ...line.split(' ')]))
      for (const { words } of textsOf(drawing.marks)) {
        const line = plain(words)
        if (!shown.has(line)) for (const word of line.split(' ')) expect(all).toContain(word)
      }
      for (const { marks } of tiles) {
        const words = textsOf(marks).filter(({ subject }) => subject !== 'seam')
        const boxes = words.map(text => markBounds(fonts, text))
        const onSeam = marks.filter(
          m => m.subject === 'seam' && (m.kind === 'text' || (m.kind === 'path' && m.role === 'thin')),
        )
        boxes.forEach((box, i) => {
          for (const other of [...boxes.slice(i + 1), ...onSeam.map(mark => markBounds(fonts, mark))])
            expect(sharedArea(box, other)).toBe(0)
        })
      }
    }
  },
)
