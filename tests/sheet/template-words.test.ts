import { expect, test } from 'vitest'
import { plain } from '../../src/text/words.ts'
import { planOf, planWithCuts } from '../model/model-of.ts'
import { firstDrawing, keyText, said, sheetsOf, textsOf } from './sheets-of.ts'

const inches = (cut: string) => `paperjig: 1
title: Loom
units: inch
stock: { beam: { thickness: 3/4, wood: beech } }
parts: { cheek: { from: beam, size: 6 x 3 1/2, cuts: [ { ${cut} } ] } }
`

/** A bit is named by its own size, whatever the plan's precision; the other sizes are in the plan's units. */
test.each([
  ['hole: pin, at: center, diameter: 3/16', 'bore 3/16", through'],
  ['hole: pin, at: center, diameter: 5 mm, depth: 1/4', 'bore 5 mm, 1/4" deep'],
  ['hole: pin, at: center, diameter: ~1/4', 'bore ~1/4", through'],
  ['hole: pin, at: center, diameter: 1/4, depth: ~1/2', 'bore 1/4", ~1/2" deep'],
  [
    'hole: leg, at: center, diameter: 1/4, lean: { toward: right, angle: 8 }',
    'bore 1/4" leaning 8° toward the right, through',
  ],
  [
    'hole: bolt, at: center, diameter: 1/4, counterbore: 1/2 x 3/16',
    'bore 1/4", through, counterbore 1/2", 3/16" deep',
  ],
  [
    'hole: screw, at: center, diameter: 3/16, countersink: 3/8',
    'bore 3/16", through, countersink 82° to 3/8"',
  ],
  [
    'hole: screw, on: back, at: center, diameter: 3/16, countersink: { diameter: ~3/8, angle: 90 }',
    'bore 3/16", through, countersink 90° to ~3/8" on the back',
  ],
  // common practice, no source: the spur of a small brad point is about 1/16 in
  [
    'hole: pin, at: center, diameter: 1/4, depth: 1/4, bit: brad',
    'bore 1/4", 1/4" deep, brad point bit, its point 1/16" deeper',
  ],
  // Source: 0.20711 × 1/2 in by calculation
  [
    'hole: pin, at: center, diameter: 1/2, depth: 1/4, bit: { point: twist, angle: 135 }',
    'bore 1/2", 1/4" deep, twist bit of 135°, its point ≈ 7/64" (0.104") deeper',
  ],
  ['hole: pin, at: center, diameter: 1/2, depth: 1/4, bit: flat', 'bore 1/2", 1/4" deep, flat bit'],
  ['hole: pin, at: center, diameter: 1/2, bit: brad', 'bore 1/2", through, brad point bit'],
  ['slot: mouth, at: center, size: 1 1/8 x 3/8', 'slot 1 1/8" × 3/8", through'],
  [
    'slot: mouth, at: center, size: 1 x 3/8, ends: round, depth: 1/4',
    'mortise 1" × 3/8", round ends, 1/4" deep',
  ],
  ['notch: step, on: left, at: { bottom: 1 }, size: 1 1/2 x 5/16', 'notch 1 1/2" along, 5/16" in'],
])('{ %s } is said as "%s"', (cut, words) => {
  expect(said(firstDrawing(inches(cut)))).toContain(words)
})

test('the key says the finished size, the stock and its wood', () => {
  expect(said(firstDrawing(inches('hole: pin, at: center, diameter: 1/4')))).toContain(
    '6" × 3 1/2" × 3/4"  beam, beech',
  )
})

test('a plan in millimetres is said in millimetres', () => {
  const drawing = firstDrawing(planWithCuts(['hole: pin, at: center, diameter: 4, depth: 7.5']))
  expect(said(drawing)).toContain('bore 4 mm, 7.5 mm deep')
  expect(said(drawing)).toContain('100 mm × 40 mm × 20 mm')
})

test('a row is named once with the number of its holes, and a hole from behind as one', () => {
  const key = keyText(
    firstDrawing(
      planWithCuts([
        'row: posts, at: { left: 10, bottom: 10 }, toward: right, spacing: 10, count: 4, diameter: 3',
        'hole: pin, on: back, at: { left: 80, bottom: 30 }, diameter: 3',
      ]),
    ),
  )
  expect(key).toContain('posts (row of 4), pin, from the back')
})

test('what is on another face, and what has no place, is said to be missing from this paper', () => {
  const key = keyText(
    firstDrawing(
      planWithCuts([
        'row: posts, on: top, at: { left: 10, front: 10 }, toward: right, spacing: 10, count: 4, diameter: 3',
        'hole: pin, on: right, at: center, diameter: 3',
        'hole: lost, at: { left: 3 }, diameter: 3',
        'slot: vague, at: center, size: unknown x 4',
      ]),
    ),
  )
  expect(key).toContain('On other faces, not on this paper: posts on top, pin on right.')
  expect(key).toContain('Not on this paper: hole lost wants a distance from bottom or top.')
  expect(key).toContain('Not on this paper: slot vague wants the size along.')
})

test('on a mirrored piece the ends are called by what they are', () => {
  const text = planOf(`    make: 2
    mirrored: true
    cuts:
      - { hole: pin, on: left, at: center, diameter: 3 }
      - { hole: peg, on: right, at: center, diameter: 3 }
      - { hole: lost, at: { bottom: 3 }, diameter: 3 }
`)
  const [drawn, mirrored] = sheetsOf(text).map(s => keyText(s.drawings[0]))
  expect(drawn).toContain('pin on left, peg on right')
  expect(drawn).toContain('a distance from left or right')
  expect(mirrored).toContain('pin on the reference end, peg on the other end')
  expect(mirrored).toContain('a distance from the reference end or the other end')
  expect(mirrored).not.toMatch(/\b(left|right)\b/)
})

test('a corner without a radius is said to be missing', () => {
  expect(keyText(firstDrawing(planOf('    corners: { top-left: unknown }\n')))).toContain(
    'Not on this paper: the radius of the top-left corner.',
  )
})

test('several pieces of one hand share a template, which says how often to print it', () => {
  const [drawn, mirrored, ...others] = sheetsOf(planOf('    make: 6\n    mirrored: true\n'))
  expect(others).toEqual([])
  expect(drawn!.drawings[0].caption.pieces).toBe('pieces 1–3 of 6, as drawn')
  expect(mirrored!.drawings[0].caption.pieces).toBe('pieces 4–6 of 6, mirrored')
  expect(keyText(drawn!.drawings[0])).toContain('Print this page 3 times, once for each piece.')
  expect(said(mirrored!.drawings[0])).toContain('plank/4–6')
  expect([drawn!.id, mirrored!.id]).toEqual(['plank-template', 'plank-template-mirrored'])
})

test('a part of one hand is not said to be as drawn', () => {
  expect(firstDrawing(planOf('')).caption.pieces).toBe('piece 1 of 1')
})

test('the maker’s note stands in the key, broken into lines, as it was written', () => {
  const note =
    'Cut both from the same blank, so that the grain runs on across the joint, and keep the offcut.'
  expect(keyText(firstDrawing(planOf(`    note: ${note}\n`)))).toContain(note)
})

test('a part too small for its marks has them said in words', () => {
  const tiny = (body: string) => keyText(firstDrawing(planOf(body, '8 x 5 x 3')))
  expect(tiny('')).toContain('No room for the name, plank/1: write it on the piece.')
  expect(tiny('')).toContain('The grain runs from end to end.')
  expect(tiny('    cuts:\n      - { hole: pin, at: center, diameter: 4 }\n')).toContain(
    'The face edge is the lower one.',
  )
  const turned =
    '    face-edge: top\n    reference-end: right\n    cuts:\n      - { hole: pin, at: center, diameter: 4 }\n'
  expect(tiny(turned)).toContain('The face edge is the upper one. The reference end is at the right.')
})

test('a part with room for every mark says what they mean, and nothing about want of room', () => {
  const key = keyText(firstDrawing(planWithCuts(['slot: mouth, at: center, size: 30 x 8'])))
  expect(key).toContain(
    'Loop: face side. V: face edge. Triangle: reference end. Measure from these. Hatched: waste.',
  )
  expect(key).not.toMatch(/No room|The grain runs|The face edge is|The reference end is/)
})

test('nothing is said of hatching where nothing is hatched', () => {
  expect(keyText(firstDrawing(planOf('')))).not.toContain('Hatched')
})

/** 400 holes so near together that most have no room for a letter. */
const crowd = Array.from(
  { length: 400 },
  (_, i) =>
    `hole: h${i}, at: { left: ${1 + 2.4 * (i % 40)}, bottom: ${1 + 2.4 * Math.floor(i / 40)} }, diameter: 2`,
)

test('what has no room for its letter is listed by where it is, and the others have theirs', () => {
  const drawing = firstDrawing(planWithCuts(crowd, '96 x 24 x 5'))
  const key = keyText(drawing)
  expect(key).toContain('No room on the part for these letters.')
  const table = said({ marks: drawing.marks.filter(m => m.subject === 'key') })
  const lines = table.slice(table.indexOf('reference end') + 1).join(' ')
  const listed = lines.split(/(?= \d+ A )|(?=^1 A )/).flatMap(line => {
    const [, edge, along] = /^ ?\d+ A (\S+) mm (.*) mm$/.exec(line)!
    return along!.split(/ mm,? +/).map(x => `${x} ${edge}`)
  })
  const letters = textsOf(drawing.marks).filter(t => plain(t.words) === 'A' && t.subject !== 'key')
  expect(letters.length).toBeGreaterThan(20)
  const lettered = letters.map(t => Number(t.subject!.slice(1)))
  const shown = (mm: number) => String(Math.round(mm * 10) / 10)
  const expected = crowd.flatMap((_, i) =>
    lettered.includes(i) ? [] : [`${shown(1 + 2.4 * (i % 40))} ${shown(1 + 2.4 * Math.floor(i / 40))}`],
  )
  expect([...listed].sort()).toEqual(expected.sort())
})

test('in the table a mirrored piece is measured from its own reference end', () => {
  const places = Array.from({ length: 30 }, (_, i) => (30 + 12 * i) / 10)
  const holes = places.map((x, i) => `      - { hole: h${i}, at: { left: ${x}, bottom: 4 }, diameter: 1 }\n`)
  const body = `    make: 2\n    mirrored: true\n    cuts:\n${holes.join('')}`
  for (const { drawings } of sheetsOf(planOf(body, '60 x 12 x 4'))) {
    const [, line] = /reference end 1 A 4 mm (.*)$/.exec(keyText(drawings[0]))!
    const listed = line!.split(/ mm,? */).filter(size => size !== '')
    expect(listed.length).toBeGreaterThan(3)
    for (const size of listed) expect(places.map(String)).toContain(size)
  }
})

test('no two sheets have the same id, whatever the parts are called', () => {
  const ids = sheetsOf(`paperjig: 1
title: Pier
units: mm
parts:
  rail: { size: 50 x 20 x 5, make: 2, mirrored: true }
  rail-mirrored: { size: 50 x 20 x 5 }
  rail-template: { size: 50 x 20 x 5, make: 2, mirrored: true }
  rail-template-mirrored: { size: 50 x 20 x 5 }
`).map(s => s.id)
  expect(new Set(ids).size).toBe(6)
})

test('boring comes before sawing, and is not spoken of where nothing is bored', () => {
  expect(keyText(firstDrawing(planWithCuts(['hole: pin, on: left, at: center, diameter: 3'])))).toContain(
    'Bore first, while the piece is a rectangle; then saw outside the line and sand to it.',
  )
  const plain = keyText(firstDrawing(planOf('')))
  expect(plain).toContain('The middle of the thin line is the edge. Saw outside the line and sand to it.')
  expect(plain).not.toContain('Bore')
})

test('two leans are said one after the other, in as many lines as there is room for', () => {
  const lean = 'lean: [{ toward: left, angle: 7 1/2 }, { toward: top, angle: 12 }]'
  const key = keyText(firstDrawing(inches(`hole: leg, at: center, diameter: 1/4, depth: 1/2, ${lean}`)))
  expect(key).toContain('bore 1/4" leaning 7.5° toward the left and 12° toward the top, 1/2" deep')
})

/** Source: rake and splay, by definition: tan² 7.0532° = 2·tan² 5°. */
test('the key says how the table is tilted for a hole that leans', () => {
  const key = (lean: string) =>
    keyText(firstDrawing(inches(`hole: leg, at: center, diameter: 1/4, lean: ${lean}`)))
  expect(key('{ toward: right, angle: 8 }')).toContain('Table tilted 8°, uphill toward the right.')
  expect(key('[{ toward: right, angle: 5 }, { toward: top, angle: 5 }]')).toContain(
    'Table tilted 7.05°, uphill along the sight line: 45° from the right toward the top.',
  )
  expect(keyText(firstDrawing(inches('hole: leg, at: center, diameter: 1/4')))).not.toContain('Table')
})

test('on a mirrored piece a hole leans toward the end that it is, by its name', () => {
  const cuts = '    cuts: [{ hole: leg, at: center, diameter: 4, lean: { toward: left, angle: 8 } }]\n'
  const [, mirrored] = sheetsOf(planOf(`    make: 2\n    mirrored: true\n${cuts}`))
  expect(keyText(mirrored!.drawings[0])).toContain('leaning 8° toward the reference end')
})

test('the key says what the marks of leaning holes are, where there are any', () => {
  const key = (cut: string) => keyText(firstDrawing(planWithCuts([`hole: leg, ${cut}, diameter: 4`])))
  const [arrow, dashed, other] = ['Line with an arrow', 'Dashed ellipse', 'Ellipse without a cross']
  const lean = 'lean: { toward: right, angle: 8 }'
  const through = key(`at: center, ${lean}`)
  expect([through.includes(arrow!), through.includes(dashed!), through.includes(other!)]).toEqual([
    true,
    true,
    false,
  ])
  const stopped = key(`at: center, depth: 5, ${lean}`)
  expect([stopped.includes(arrow!), stopped.includes(dashed!)]).toEqual([true, false])
  const behind = key(`on: back, at: center, ${lean}`)
  expect([behind.includes(arrow!), behind.includes(dashed!), behind.includes(other!)]).toEqual([
    false,
    false,
    true,
  ])
  expect(behind).toContain('not on this paper: leg on back')
  expect(key('at: center')).not.toContain('llipse')
})
