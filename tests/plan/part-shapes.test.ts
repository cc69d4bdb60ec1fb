import { describe, expect, it } from 'vitest'
import { onlyFindingOf, planOf, withCut } from './reading.ts'

const part = (...lines: readonly string[]) =>
  `paperjig: 1\ntitle: Pier\nunits: inch\nstock: { plank: { thickness: 3/4 } }\nparts:\n  jib:\n${lines
    .map(line => `    ${line}\n`)
    .join('')}`

const square = 'outline: [{ to: [0, 0] }, { to: [1, 0] }, { to: [0, 1] }]'

describe('a part', () => {
  /** What says two things at once, or too little, and the rule that finds it. */
  it.each([
    [['from: plank'], 'missing-key'],
    [['from: plank', square, 'corners: 1/4'], 'not-both'],
    [['from: plank', 'round: 2', 'size: 2 x 2'], 'not-both'],
    [['from: plank', 'size: 2 x 2', 'symmetric: left-right'], 'not-both'],
    [['from: plank', 'size: 2 x 2', 'inside: 1'], 'not-both'],
    [['size: 2 x 2 x 1/2', 'thickness: 1/2'], 'not-both'],
    [['size: 2 x 2 x 1/2', 'ends: round', 'corners: { top-left: 1/4 }'], 'not-both'],
    [['size: 2', 'from: plank'], 'not-a-size'],
    [['from: plank', 'taper: { left: 2, right: 1 }'], 'missing-key'],
    [['from: plank', 'size: 4 x 2', 'taper: { left: 2, right: 1 }'], 'not-a-size'],
    [['from: plank', 'size: 4', 'taper: { left: 2 }'], 'missing-key'],
    [['from: plank', 'size: 4', 'taper: { left: 2, right: 1, straight: left }'], 'not-a-choice'],
    [['from: plank', 'size: 4 x 2', 'ends: square'], 'not-a-choice'],
    [['from: plank', 'size: 4 x 2', 'sides: { left: right }'], 'reserved-name'],
    [['from: plank', 'size: 4 x 2', 'sides: { left: from }'], 'reserved-name'],
    [['from: plank', 'size: 4 x 2', 'sides: { left: nose, right: nose }'], 'side-twice'],
    [['from: plank', 'size: 4 x 2', 'sides: { prow: nose }'], 'unknown-key'],
  ] as const)('%j finds %s', (lines, rule) => {
    expect(onlyFindingOf(part(...lines)).rule).toBe(rule)
  })

  it('in one line reads the same as the long form', () => {
    const without = (text: string) =>
      JSON.parse(
        JSON.stringify(planOf(text).parts[0], (key, value) => (key === 'source' ? undefined : value)),
      )
    const head =
      'paperjig: 1\ntitle: Pier\nunits: inch\nlet: { board: 3/4 }\nstock: { hard-plank: { thickness: 3/4 } }\nparts:\n'
    const short = (line: string) => without(`${head}  arm: ${line}\n`)
    const long = (lines: string) => without(`${head}  arm: { ${lines} }\n`)
    expect(short('7 1/4 x 1 3/8 x hard-plank')).toEqual(long('from: hard-plank, size: 7 1/4 x 1 3/8'))
    expect(short('7 1/4 x 1 3/8 x board')).toEqual(long('size: 7 1/4 x 1 3/8 x board'))
    expect(short('7 1/4 x 1 3/8 x 3/4')).toEqual(long('size: 7 1/4 x 1 3/8 x 3/4'))
    expect(short('"7 1/4 x 1 3/8 x hard-plank"')).toEqual(long('from: hard-plank, size: 7 1/4 x 1 3/8'))
  })

  it('in one line that names no stock says where', () => {
    const text = 'paperjig: 1\ntitle: Pier\nunits: inch\nparts:\n  arm: 7 x 1 x hard-plank\n'
    expect(onlyFindingOf(text)).toMatchObject({ rule: 'not-a-size', line: 5 })
    expect(onlyFindingOf(text.replace('7 x 1 x hard-plank', '7 x 1'))).toMatchObject({ line: 5, column: 8 })
  })

  it('may call its sides by words of its own, and reads as with the plain ones', () => {
    const own = part(
      'size: 4 x 2 x 1',
      'sides: { left: nose, front: deck, top: keel }',
      'cuts:',
      '  - { hole: a, on: deck, at: { nose: 1, keel: 1/2 }, diameter: 1/4 }',
      '  - { row: b, at: { nose: 1, keel: 1 }, toward: nose, spacing: 1/4, count: 2, diameter: 1/8 }',
      '  - { row: c, on: [deck, back], at: { right: 1, keel: 1 }, last: { nose: 1 }, count: 2, diameter: 1/8 }',
      '  - { notch: d, on: keel, at: { nose: 1 }, size: 1/2 x 1/4 }',
    )
    const plain = own
      .replace(/ {4}sides: .*\n/, '')
      .replaceAll('nose', 'left')
      .replaceAll('keel', 'top')
      .replaceAll('deck', 'front')
    const cuts = (text: string) =>
      JSON.stringify(planOf(text).parts[0]!.cuts, (key, value) => (key === 'source' ? undefined : value))
    expect(cuts(own)).toBe(cuts(plain))
    // the places are those of the words as they were written
    const [first] = planOf(own).parts[0]!.cuts
    const { from, to } = first!.kind === 'hole' ? first!.on[0].source : { from: 0, to: 0 }
    expect(own.slice(from, to)).toBe('deck')
    expect(onlyFindingOf(own.replace('nose: 1, keel: 1/2', 'nose: 1, left: 2, keel: 1')).rule).toBe(
      'not-both',
    )
  })
})

describe('a cut', () => {
  it('without a name is numbered by its kind, past the names that are taken', () => {
    const plan = planOf(
      part(
        'size: 4 x 2 x 1',
        'cuts:',
        '  - { hole: , at: center, diameter: 1 }',
        '  - { hole: hole-2, at: center, diameter: 1 }',
        '  - hole:',
        '    diameter: 1',
        '  - { slot: ~, at: center, size: 1 x 1/2 }'.replace('~', ''),
      ),
    )
    expect(plan.parts[0]!.cuts.map(({ id }) => id.value)).toEqual(['hole-1', 'hole-2', 'hole-3', 'slot-1'])
  })

  it.each([
    ['hole: a|for: axle', 'missing-key'],
    ['hole: a|fit: push', 'missing-key'],
    ['hole: a|at: center', 'missing-key'],
    ['hole: a|diameter: 1|for: axle|fit: push', 'not-both'],
    ['hole: a|for: axle|fit: turnin', 'not-a-choice'],
    ['hole: a|diameter: 1|on: [front, top]', 'faces-differ'],
    ['hole: a|diameter: 1|on: [front, front]', 'side-twice'],
    ['hole: a|diameter: 1|on: []', 'nothing-in-it'],
    ['hole: a|diameter: 1|at: { from: b, left: center }', 'wrong-kind'],
    ['hole: a|diameter: 1|at: { from: "b c" }', 'wrong-kind'],
    ['hole: a|diameter: 1|at: { concentric: top-left, left: 1 }', 'not-both'],
    ['hole: a|diameter: 1|at: { start: 1, bottom: 1 }', 'side-off-face'],
    ['row: a|diameter: 1|count: 3|at: center', 'missing-key'],
    ['row: a|diameter: 1|count: 3|at: center|spacing: 1', 'missing-key'],
    ['row: a|diameter: 1|count: 3|at: center|last: { right: 1 }|spacing: 1', 'not-both'],
    ['row: a|diameter: 1|count: 1|at: center|last: { right: 1 }', 'not-a-count'],
    ['row: a|diameter: 1|count: 3|at: center|last: { right: 1, top: 1 }', 'wrong-kind'],
    ['grid: a|diameter: 1|count: 3|spacing: 1|at: center', 'not-a-count'],
    ['grid: a|diameter: 1|count: 100 x 100|spacing: 1|at: center', 'not-a-count'],
    ['hole-circle: a|diameter: 1|count: 3|at: center', 'missing-key'],
    ['cut-out: a|at: center', 'missing-key'],
    ['cut-out: a|at: center|size: 1 x 2|round: 3', 'not-both'],
    ['cut-out: a|at: center|round: 3|corners: 1', 'not-both'],
    ['cut-out: a|at: center|round: 3|entry: { at: { from: b } }', 'wrong-kind'],
    ['notch: a|at: { from: b }|size: 1 x 1', 'wrong-kind'],
  ])('{ %s } finds %s', (lines, rule) => {
    expect(onlyFindingOf(withCut(...lines.split('|'))).rule).toBe(rule)
  })
})

describe('pins, joints and what is confirmed', () => {
  const plan = (line: string) => `${part('size: 4 x 2 x 1')}${line}\n`

  it.each([
    ['pins: { axle: { length: 2 } }', 'missing-key'],
    ['pins: { axle: { diameter: 2, lenght: 3 } }', 'unknown-key'],
    ['joints: [{ through: [jib.a] }]', 'missing-key'],
    ['joints: [{ pin: axle }]', 'missing-key'],
    ['joints: [{ pin: axle, through: [] }]', 'nothing-in-it'],
    ['joints: [{ pin: axle, through: [jib.a], into: jib.b }]', 'not-both'],
    ['joints: [{ tongue: jib.left }]', 'missing-key'],
    ['joints: [{ tongue: jib.left, into: jib.b, through: [jib.a] }]', 'not-both'],
    ['joints: [{ pin: axle, through: [jib/0.a] }]', 'wrong-kind'],
    ['joints: [{ pin: axle, through: [jib.a.b] }]', 'wrong-kind'],
    ['joints: { pin: axle }', 'wrong-kind'],
    ['confirmed: [jib.a.3]', 'wrong-kind'],
    ['confirmed: jib', 'wrong-kind'],
  ])('%s finds %s', (line, rule) => {
    expect(onlyFindingOf(plan(line)).rule).toBe(rule)
  })

  it('references are taken apart', () => {
    const { joints } = planOf(
      plan('joints: [{ pin: axle, through: [jib, jib/2, jib.a, jib/2.a, jib.a.3, jib/2.a.all] }]'),
    )
    const [joint] = joints
    expect(
      joint?.kind === 'pin' &&
        joint.through.map(({ part, piece, name, member }) => [part, piece, name, member]),
    ).toEqual([
      ['jib', undefined, undefined, undefined],
      ['jib', 2, undefined, undefined],
      ['jib', undefined, 'a', undefined],
      ['jib', 2, 'a', undefined],
      ['jib', undefined, 'a', 3],
      ['jib', 2, 'a', 'all'],
    ])
  })
})
