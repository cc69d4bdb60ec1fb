import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import type { Drawing } from '../../../src/drawing/drawing.ts'
import { contourBounds } from '../../../src/geometry/measure/bounds.ts'
import { plain } from '../../../src/text/words.ts'
import { planOf } from '../../model/model-of.ts'
import { everyDrawing, keyText, markOutsOf, said, textsOf } from '../sheets-of.ts'

const demo = readFileSync(
  new URL('../../../examples/cliff-railway/cliff-railway.yaml', import.meta.url),
  'utf8',
)

const first = (text: string, change?: Parameters<typeof markOutsOf>[1]): Drawing =>
  markOutsOf(text, change)[0]!.drawings[0]
const cuts = (...lines: readonly string[]) =>
  `    cuts:\n${lines.map(line => `      - { ${line} }\n`).join('')}`
const dimensions = (drawing: Drawing) =>
  textsOf(drawing.marks)
    .filter(({ layer }) => layer === 'dimension')
    .map(({ words }) => plain(words))
const views = (drawing: Drawing) =>
  textsOf(drawing.marks)
    .filter(({ subject }) => subject === 'view')
    .map(text => ({ name: plain(text.words), ...text.at }))
const notes = (drawing: Drawing) =>
  textsOf(drawing.marks)
    .filter(({ subject }) => subject === 'note')
    .map(({ words }) => plain(words))
const roles = (drawing: Drawing) => new Set(drawing.marks.flatMap(m => (m.kind === 'path' ? [m.role] : [])))

test('a plain part has its length and width from the reference end and the face edge, and nothing else', () => {
  expect(dimensions(first(planOf(''))).sort()).toEqual(['0', '0', '100', '40'])
})

/** Common practice, no source: all from one end, not gap by gap. */
test.each([
  ['left', 'bottom', ['0', '10', '35', '100', '0', '12', '40']],
  ['right', 'bottom', ['0', '65', '90', '100', '0', '12', '40']],
  ['left', 'top', ['0', '10', '35', '100', '0', '28', '40']],
])('from the %s end and the %s edge holes run in one line of distances', (end, edge, expected) => {
  const drawing = first(
    planOf(
      `    reference-end: ${end}\n    face-edge: ${edge}\n${cuts(
        'hole: a, at: { left: 10, bottom: 12 }, diameter: 4',
        'hole: b, at: { left: 35, bottom: 12 }, diameter: 5',
      )}`,
    ),
  )
  expect(dimensions(drawing).sort()).toEqual([...expected].sort())
})

/** Common practice, no source. */
test('what stands on the middle, alone or as a pair, is measured from a centre line', () => {
  const drawing = first(
    planOf(
      cuts(
        'row: pair, at: { left: center, bottom: 15 }, toward: right, spacing: 30, count: 2, diameter: 4',
        'slot: eye, at: { left: center, bottom: 25 }, size: 12 x 6',
      ),
    ),
  )
  expect(dimensions(drawing).filter(words => words === '15')).toHaveLength(3)
  expect(dimensions(drawing)).toContain('centre')
  expect(dimensions(drawing).filter(words => words === '6')).toHaveLength(2)
  expect(roles(drawing)).toContain('centre')
  expect(keyText(drawing)).toContain('find the middle of your piece')
  expect(keyText(first(planOf('')))).not.toContain('middle')
})

test('holes that have to match the other hand’s have their distance between themselves', () => {
  const frame = markOutsOf(demo).find(({ part }) => part === 'side-frame')!
  expect(dimensions(frame.drawings[0])).toContain('4 1/2')
  expect(keyText(frame.drawings[0])).toContain('has to match another part')
  const floor = markOutsOf(demo).find(({ part }) => part === 'floor')!
  expect(keyText(floor.drawings[0])).not.toContain('match')
})

test('the front is always shown, another face only where something is cut into it', () => {
  const named = (...lines: readonly string[]) => views(first(planOf(cuts(...lines)))).map(({ name }) => name)
  expect(named('hole: a, at: center, diameter: 4')).toEqual(['front, face side'])
  expect(named('hole: a, on: back, at: center, diameter: 4')).toEqual(['front, face side'])
  expect(named('hole: a, on: back, at: center, diameter: 4, depth: 5')).toContain('back')
  expect(named('hole: a, on: left, at: center, diameter: 4')).toEqual(['front, face side', 'left'])
})

test('where a cut has a depth, a view along the thickness shows it dashed', () => {
  const drawing = first(planOf(cuts('hole: a, at: center, diameter: 4, depth: 9')))
  expect(views(drawing).map(({ name }) => name)).toEqual(['front, face side', 'bottom'])
  expect(roles(drawing)).toContain('hidden')
  // full depth and the sides of the hole: 9 mm from the front, 4 mm apart
  const hidden = drawing.marks.flatMap(m => (m.kind === 'path' && m.role === 'hidden' ? m.contours : []))
  const walls = contourBounds(hidden[0]!)
  expect(walls.top - walls.bottom).toBeCloseTo(9, 9)
  expect(walls.right - walls.left).toBeCloseTo(4, 9)
})

/** ISO 5456-2, from memory: in third angle the view from the top stands above the front, in first angle below. */
test.each([
  ['third', { top: 1, bottom: -1, left: -1, right: 1 }],
  ['first', { top: -1, bottom: 1, left: 1, right: -1 }],
] as const)('in %s angle every view stands on its side of the front', (projection, sides) => {
  const text = planOf(
    cuts(
      ...(['top', 'bottom', 'left', 'right'] as const).map(
        on => `hole: h-${on}, on: ${on}, at: center, diameter: 4, depth: 5`,
      ),
    ),
  )
  const drawn = views(first(text, model => ({ ...model, projection })))
  const front = drawn.find(({ name }) => name.startsWith('front'))!
  for (const side of ['top', 'bottom'] as const)
    expect(Math.sign(drawn.find(({ name }) => name === side)!.y - front.y)).toBe(sides[side])
  for (const side of ['left', 'right'] as const)
    expect(Math.sign(drawn.find(({ name }) => name === side)!.x - front.x)).toBe(sides[side])
})

test('radii, round ends, chamfers and slopes are written beside their lines, with how many there are', () => {
  expect(notes(first(planOf('    corners: 5\n')))).toEqual(['R 5 (4)'])
  expect(notes(first(planOf('    corners: { top-left: { chamfer: 5 } }\n')))).toEqual(['chamfer 5'])
  expect(notes(first(planOf(cuts('slot: s, at: center, size: 30 x 8, ends: round'))))).toEqual(['R 4 (2)'])
})

test('the table says which cut, how far from which edges, with which bit and how deep', () => {
  const words = said(
    first(
      planOf(
        cuts(
          'row: pegs, on: top, at: { left: 10, front: 8 }, toward: right, spacing: 20, count: 4, diameter: 5, depth: 12',
        ),
      ),
    ),
  )
  const table = words.slice(words.indexOf('top', words.indexOf('100 mm × 40 mm × 20 mm')))
  expect(table.slice(0, 8)).toEqual([
    'top',
    'from the face side',
    'from the reference end',
    'A',
    'bore 5 mm, 12 mm deep',
    'pegs',
    '8',
    '10,  30,  50,  70',
  ])
})

test.each([
  ['', 'toward the right', 'uphill toward the right'],
  ['    make: 2\n    mirrored: true\n', 'toward the other end', 'uphill toward the other end'],
])(
  'the table says how the drill press is set for a hole that leans, and its bit’s point (%j)',
  (more, way, uphill) => {
    const lean = 'lean: { toward: right, angle: 8 }, depth: 10, bit: brad'
    const text = planOf(more + cuts(`hole: peg, at: { left: 30, bottom: 12 }, diameter: 4, ${lean}`))
    const words = said(first(text)).join(' ')
    expect(words).toContain(`bore 4 mm leaning 8° ${way}, 10 mm deep, brad point bit, its point`)
    expect(words).toContain(`Table tilted 8°, ${uphill}.`)
  },
)

test('of the two distances that place a cut only that which was scaled off the drawing has the sign', () => {
  const text = `paperjig: 1\ntitle: Rail\nunits: inch\nparts: { rail: { size: 12 x 1 1/2 x 1/2, cuts: [ { hole: lamp, at: { left: ~2 1/2, bottom: center }, diameter: 1/4 }, { hole: bell, at: { left: 3 1/2, bottom: ~1/2 }, diameter: 1/4 }, { hole: rope, at: { from: bell, right: ~1 }, diameter: 1/4 } ] } }\n`
  const shown = dimensions(first(text))
  expect(shown).toEqual(expect.arrayContaining(['~2 1/2', '3 1/2', '~4 1/2', '~1/2']))
  expect(shown).not.toContain('~3 1/2')
})

test('a size off its fraction says so, and one scaled off the drawing has its sign', () => {
  const text = `paperjig: 1\ntitle: Gate\nunits: inch\nparts: { rail: { size: 6 x 2 x 1, cuts: [ { hole: a, at: { left: 20 mm, bottom: ~3/4 }, diameter: 1/4 } ] } }\n`
  expect(dimensions(first(text))).toEqual(expect.arrayContaining(['≈ 25/32 (0.787)', '~3/4']))
})

test('both hands are marked out from one sheet, which speaks of the reference end and not of left', () => {
  const sheets = markOutsOf(planOf('    make: 4\n    mirrored: true\n'))
  expect(sheets).toHaveLength(1)
  const key = keyText(sheets[0]!.drawings[0])
  expect(key).toContain('Mirrored: plank/3–4. The same sizes from the same face edge and reference end')
  expect(key).toContain('its reference end is at the right')
})

/** ISO 5455, from memory. */
test('every drawing that is not true to size says its scale and that nobody measures it', () => {
  const drawings = everyDrawing(markOutsOf(planOf(cuts('hole: a, at: center, diameter: 4')))[0]!)
  const scales = new Set<string>()
  for (const drawing of drawings) {
    const heading = said({ marks: drawing.marks.filter(m => m.subject === 'heading') }).join(' ')
    if (heading === '') continue
    const [, scale] = /reduced (1:\d+)/.exec(drawing.caption.sheet) ?? []
    if (scale === undefined) expect(heading).toBe('Plank · true size')
    else expect(heading).toBe(`Plank · reduced ${scale}: do not measure this drawing`)
    scales.add(scale ?? '1:1')
  }
  expect([...scales]).toEqual(['1:1', '1:2', '1:5', '1:10', '1:20', '1:50', '1:100'])
})

test('what is not given is listed, and what has no place is not drawn', () => {
  const key = keyText(first(planOf(cuts('hole: lost, at: { left: 3 }, diameter: 3'))))
  expect(key).toContain('Not on this paper: hole lost wants a distance from bottom or top.')
})
