import { expect, it, test } from 'vitest'
import { locate } from '../../src/finding/locate.ts'
import { sentence } from '../../src/finding/sentence.ts'
import { buildModel } from '../../src/model/build/model.ts'
import { readPlan } from '../../src/plan/read-plan.ts'
import { findingsOf, onlyFindingOf, withCut } from './reading.ts'

const millimetres = { unit: 'mm', precision: 0.1 } as const

/** What a plan of one cut gives, read and worked out: rule, the characters it points at, and the sentence. */
function faultOf(cut: string, size = 'size: 100 x 40 x 20'): readonly string[] {
  const text = `paperjig: 1\ntitle: Pier\nunits: mm\nparts:\n  plank:\n    ${size}\n    cuts:\n      - { ${cut} }\n`
  const { plan, findings } = readPlan(text, 'pier.yaml')
  const all = plan === undefined ? findings : buildModel(plan).findings
  expect(all).toHaveLength(1)
  const source = all[0]!.places[0]!.source!
  const { line, column } = locate(text, source.from)
  // the cut stands in line 8, its first key in column 11
  return [
    all[0]!.rule,
    `${line}:${column}`,
    text.slice(source.from, source.to),
    sentence(all[0]!, millimetres),
  ]
}

/** Every combination that makes no sense: what points where, and one sentence. */
test.each<[cut: string, rule: string, at: string, says: string]>([
  [
    'groove: a, width: 4, depth: 6',
    'missing-key',
    'groove: a',
    'a groove needs "along": the direction that it runs in, length or width',
  ],
  [
    'groove: a, at: center, width: 4, depth: 6',
    'missing-key',
    'groove: a',
    'a groove needs "along": the direction that it runs in, length or width',
  ],
  [
    'groove: a, at: { bottom: 3 }, width: 4',
    'missing-key',
    'groove: a',
    'a groove needs "depth": a size, such as 2 1/2, or unknown',
  ],
  [
    'groove: a, on: left, along: length, at: center, width: 4, depth: 6',
    'not-a-choice',
    'length',
    '"length" is not a direction on the left (one of: thickness, width)',
  ],
  [
    'groove: a, at: { bottom: 3, left: 2 }, width: 4, depth: 6',
    'wrong-kind',
    '{ bottom: 3, left: 2 }',
    'a second distance stands here; wanted: one distance, from a side that the groove runs beside; where it stops, stopped: says',
  ],
  [
    'groove: a, along: length, at: { left: 2 }, width: 4, depth: 6',
    'side-off-face',
    'left',
    '"left" says nothing about a place on the front; there it is a distance from bottom or top',
  ],
  [
    'groove: a, at: { front: 3 }, width: 4, depth: 6',
    'side-off-face',
    'front',
    '"front" says nothing about a place on the front; there it is a distance from left or right or bottom or top',
  ],
  [
    'groove: a, at: { from: b, top: 3 }, width: 4, depth: 6',
    'wrong-kind',
    '{ from: b, top: 3 }',
    'another place stands here; wanted: a distance from a side that the groove runs beside, such as { bottom: 3/8 }',
  ],
  [
    'groove: a, at: { bottom: 3 }, width: 4, depth: 6, stopped: { top: 2 }',
    'wrong-kind',
    'top',
    'a side, "top", stands here; wanted: how far short of left or right it stops, such as stopped: { left: 1/2 }',
  ],
  [
    'groove: a, at: { bottom: 3 }, width: 4, depth: 6, length: 20',
    'missing-key',
    'length',
    'a length needs "stopped": where the length begins, such as stopped: { left: 1/2 }',
  ],
  [
    'groove: a, at: { bottom: 3 }, width: 4, depth: 6, stopped: { left: 1, right: 1 }, length: 20',
    'not-both',
    'length',
    'give two stops or length, not both',
  ],
  [
    'groove: a, at: { bottom: 3 }, width: 4, depth: 6, stopped: { left: 60, right: 60 }',
    'nothing-to-run-in',
    '60',
    'stops and length together take 120 mm (≈ 4 23/32"), and it is 100 mm (3 15/16") from end to end',
  ],
  [
    'rebate: a, edge: top, size: 4 x 6, stopped: { left: 5 }, length: 100',
    'nothing-to-run-in',
    '100',
    'stops and length together take 105 mm (≈ 4 9/64"), and it is 100 mm (3 15/16") from end to end',
  ],
  [
    'rebate: a, edge: top, size: 4 x 6, stopped: { left: 0 }',
    'size-not-positive',
    '0',
    'the distance to the stop comes to 0 mm (0"); it must be more than nothing',
  ],
  [
    'groove: a, at: { bottom: 3 }, width: 0, depth: 6',
    'size-not-positive',
    '0',
    'the width comes to 0 mm (0"); it must be more than nothing',
  ],
  [
    'groove: a, on: nowhere, at: { front: 3 }, width: 4, depth: 6',
    'unknown-edge',
    'nowhere',
    '"nowhere" is neither a side nor a straight edge of the outline with that name (known: front, back, left, right, top, bottom)',
  ],
  [
    'rebate: a, edge: back, size: 4 x 6',
    'no-arris',
    'back',
    'the front and the back do not meet, so there is no edge between them; wanted: a face and an edge of it, such as on: front and top',
  ],
  [
    'rebate: a, on: left, edge: right, size: 4 x 6',
    'no-arris',
    'right',
    'the left and the right do not meet, so there is no edge between them; wanted: a face and an edge of it, such as on: front and top',
  ],
  [
    'rebate: a, on: left, edge: top, size: 4 x 6',
    'no-arris',
    'top',
    'the left and the top meet in a corner of the outline; write it there, as a corner (corners:) or a notch',
  ],
  [
    'rebate: a, edge: top, size: 4',
    'not-a-size',
    '4',
    '"4" does not make a size; wanted: 2 or 3 sizes with x between them, such as 6 x 1 1/2 x 3/4',
  ],
  [
    'rebate: a, edge: top, size: 40 x 6',
    'nothing-left',
    '40',
    'the width of the rebate comes to 40 mm (≈ 1 37/64"), and the limit is 40 mm (≈ 1 37/64"): nothing is left of the part',
  ],
  [
    'rebate: a, edge: tip, size: 4 x 6',
    'unknown-edge',
    'tip',
    '"tip" is neither a side nor a straight edge of the outline with that name; did you mean "top"? (known: front, back, left, right, top, bottom)',
  ],
  [
    'bevel: a, on: front, angle: 15, short: back',
    'no-arris',
    'front',
    'the back and the front do not meet, so there is no edge between them; wanted: a face and an edge of it, such as on: front and top',
  ],
  [
    'bevel: a, on: right, angle: 95, short: back',
    'angle-out-of-range',
    '95',
    'the angle of the bevel comes to 95°; wanted: more than 0° and less than 90°',
  ],
  [
    'bevel: a, on: right, angle: 0, short: back',
    'angle-out-of-range',
    '0',
    'the angle of the bevel comes to 0°; wanted: more than 0° and less than 90°',
  ],
  [
    'bevel: a, on: right, angle: 80, short: back',
    'nothing-left',
    '80',
    'what the bevel takes comes to 113.43 mm (≈ 4 15/32"), and the limit is 100 mm (3 15/16"): nothing is left of the part',
  ],
  [
    'bevel: a, on: right, angle: 15, short: left',
    'not-a-choice',
    'left',
    '"left" is not the face on which the part is shorter (one of: front, back)',
  ],
  [
    'bevel: a, angle: 15, short: front',
    'missing-key',
    'bevel: a',
    'a bevel needs "on": a side, or the name of an edge, or sides, such as [front, back]',
  ],
  [
    'chamfer: a, on: top, edges: all, size: 2',
    'no-arris',
    'top',
    '"all" goes round the front or the back; on the top name the edge, front or back',
  ],
  [
    'chamfer: a, edges: [], size: 2',
    'nothing-in-it',
    '[]',
    '"edges" holds nothing; wanted: one edge at least',
  ],
  [
    'chamfer: a, edges: [top, top], size: 2',
    'side-twice',
    'top',
    '"top" stands here twice; name each side once',
  ],
  [
    'chamfer: a, edges: all, size: 20',
    'nothing-left',
    '20',
    'the chamfer comes to 20 mm (≈ 25/32"), and the limit is 20 mm (≈ 25/32"): nothing is left of the part',
  ],
  [
    'round-over: a, edges: [left, back], radius: 2',
    'no-arris',
    'back',
    'the front and the back do not meet, so there is no edge between them; wanted: a face and an edge of it, such as on: front and top',
  ],
  [
    'round-over: a, edges: top',
    'missing-key',
    'round-over: a',
    'a round-over needs "radius": a size, such as 2 1/2, or unknown',
  ],
  [
    'engrave: a, at: center',
    'missing-key',
    'engrave: a',
    'an engraving needs "text": the words, and their height; or lines: with a drawing',
  ],
  [
    'engrave: a, at: center, text: Pier',
    'missing-key',
    'engrave: a',
    'an engraving needs "height": how high a capital letter is, such as 1/2',
  ],
  [
    'engrave: a, text: Pier, height: 4, lines: [[[0, 0], [1, 1]]]',
    'not-both',
    'lines',
    'give text or lines, not both',
  ],
  [
    'engrave: a, height: 4, lines: [[[0, 0], [1, 1]]]',
    'not-both',
    'height',
    'give lines or height, not both',
  ],
  ['engrave: a, lines: []', 'nothing-in-it', 'lines', '"lines" holds nothing; wanted: one line at least'],
  [
    'engrave: a, lines: [[[0, 0]]]',
    'nothing-in-it',
    '[[0, 0]]',
    '"lines" holds nothing; wanted: two points at least in a line',
  ],
  [
    'engrave: a, lines: [[[0, 0], [1, 1, 2]]]',
    'wrong-kind',
    '[1, 1, 2]',
    'a list stands here; wanted: a point [x, y], such as [5 1/4, 1/2]',
  ],
  [
    'engrave: a, lines: [[[1, 1], [1, 1]]]',
    'curve-impossible',
    '[1, 1]',
    'two neighbouring points of this curve are one; leave one of them out',
  ],
  [
    'engrave: a, at: { from: b, left: 2 }, text: Pier, height: 4',
    'wrong-kind',
    '{ from: b, left: 2 }',
    'another place stands here; wanted: distances from two sides, such as { left: 1/2, bottom: 1/4 }',
  ],
])('%s', (cut, rule, at, says) => {
  const [found, , marked, said] = faultOf(cut)
  expect([found, marked, said]).toEqual([rule, at, says])
})

test('the place of a fault is the line and column of the word', () => {
  expect(faultOf('rebate: a, edge: back, size: 4 x 6')[1]).toBe('8:28')
  expect(faultOf('groove: a, at: { bottom: 3 }, width: 4, depth: 6, stopped: { top: 2 }')[1]).toBe('8:72')
})

test.each([
  ['a disc', 'round: 40\n    thickness: 10', 'bevel: a, on: right, angle: 15, short: front', 'right'],
  ['a round end', 'size: 100 x 40 x 20\n    ends: round', 'rebate: a, edge: left, size: 2 x 2', 'left'],
])('along %s nothing is worked but all round', (_, size, cut, at) => {
  const [rule, , marked] = faultOf(cut, size)
  expect([rule, marked]).toEqual(['no-straight-edge', at])
})

it('reads own words for sides in all the new keys', () => {
  const own =
    'paperjig: 1\ntitle: Pier\nunits: mm\nparts:\n  plank:\n    size: 100 x 40 x 20\n    sides: { front: deck, left: nose, top: rail }\n    cuts:\n'
  const cuts = [
    'groove: a, on: deck, at: { rail: 3 }, width: 4, depth: 6, stopped: { nose: 5 }',
    'rebate: b, on: deck, edge: nose, size: 4 x 6, stopped: { rail: 5 }',
    'bevel: c, on: rail, angle: 15, short: deck',
    'chamfer: d, on: deck, edges: [nose, rail], size: 2',
  ]
  expect(findingsOf(`${own}${cuts.map(cut => `      - { ${cut} }\n`).join('')}`)).toEqual([])
})

it('holds an engraved text and its lines to their limits', () => {
  expect(onlyFindingOf(withCut('engrave: a', 'height: 4', `text: ${'x'.repeat(201)}`))).toMatchObject({
    rule: 'limit-passed',
  })
  expect(onlyFindingOf(withCut('engrave: a', 'height: 4', 'text: "a\\u0007b"'))).toMatchObject({
    rule: 'forbidden-character',
  })
  const many = Array.from({ length: 1001 }, () => '[[0, 0], [1, 1]]').join(', ')
  expect(onlyFindingOf(withCut('engrave: a', `lines: [${many}]`))).toMatchObject({
    rule: 'limit-passed',
    facts: { of: 'lines of one engraving' },
  })
})
