import { describe, expect, it } from 'vitest'
import { readPlan } from '../../src/plan/read-plan.ts'
import { findingsOf, onlyFindingOf, withCut, withPart } from './reading.ts'

const rest = ['paperjig: 1', 'title: Loom', 'parts: { beam: { size: 1 x 1 x 1 } }']

describe('a value of the wrong kind', () => {
  it('is told with what was wanted', () => {
    expect(onlyFindingOf(withPart('cuts: 3'))).toMatchObject({ rule: 'wrong-kind', facts: { text: '3' } })
    expect(onlyFindingOf(withPart('label: [a, b]')).facts).toEqual({ found: 'a list', wanted: 'a text' })
    expect(onlyFindingOf(withPart('make: { two: 2 }')).facts).toMatchObject({ found: 'a group of keys' })
    expect(onlyFindingOf(`${rest.join('\n')}\nunits: mm\nlet: 3\n`)).toMatchObject({ rule: 'wrong-kind' })
    expect(onlyFindingOf(withCut('hole: a', 'diameter: 1', 'at: left'))).toMatchObject({ rule: 'wrong-kind' })
  })

  it('or none at all, too', () => {
    for (const line of ['label:', 'label: null', 'label: ""', 'make:', 'cuts:', 'corners:', 'size:']) {
      const text = line === 'size:' ? withPart().replace('12 x 2 x 3/4', '') : withPart(line)
      expect(onlyFindingOf(text).rule).toBe('missing-value')
    }
  })
})

describe('a choice', () => {
  it('names the nearest word and all of them', () => {
    expect(onlyFindingOf([...rest, 'units: inches'].join('\n'))).toEqual({
      rule: 'not-a-choice',
      line: 4,
      column: 8,
      facts: { found: 'inches', of: 'a unit', nearest: 'inch', allowed: 'inch, mm' },
    })
    expect(onlyFindingOf(withPart('face-edge: left')).rule).toBe('not-a-choice')
    expect(onlyFindingOf(withPart('reference-end: rigth')).facts).toMatchObject({ nearest: 'right' })
    expect(onlyFindingOf(withCut('notch: a', 'on: front', 'size: 1 x 1')).facts).toMatchObject({
      allowed: 'bottom, top, left, right',
    })
  })

  it('of yes and no is true and false', () => {
    expect(onlyFindingOf(withPart('make: 2', 'mirrored: yes')).facts).toMatchObject({ nearest: 'true' })
    expect(findingsOf(withPart('make: 2', 'mirrored: TRUE'))).toEqual([])
  })
})

describe('a count', () => {
  it('is a whole number from 1', () => {
    for (const make of ['0', '-1', '1.5', '2e1', '0x2', 'two', '1001', '99999999999999999999']) {
      expect(onlyFindingOf(withPart(`make: ${make}`))).toMatchObject({
        rule: 'not-a-count',
        line: 7,
        column: 11,
      })
    }
  })

  it('of mirrored pieces is even', () => {
    const { findings } = readPlan(withPart('make: 3', 'mirrored: true'), 'plan.yaml')
    expect(findings).toMatchObject([{ rule: 'odd-mirrored', facts: { count: '3' } }])
    expect(findings[0]?.places).toHaveLength(2)
    expect(onlyFindingOf(withPart('mirrored: true'))).toMatchObject({ rule: 'odd-mirrored', line: 5 })
  })
})

describe('a name', () => {
  it('of a part, stock or cut is small letters, digits and hyphens', () => {
    expect(onlyFindingOf(withCut('hole: Peg Hole', 'diameter: 1'))).toMatchObject({
      rule: 'not-an-id',
      facts: { found: 'Peg Hole', nearest: 'peg-hole' },
    })
    for (const name of ['3a', '-a', 'a_b', 'Ä', 'a.b', '12']) {
      const text = withPart().replace('beam', name)
      expect(onlyFindingOf(text)).toMatchObject({ rule: 'not-an-id', line: 5, column: 3 })
    }
  })

  it('of two cuts of one part is told at the second', () => {
    const twice = withPart('cuts:', '- { hole: a, diameter: 1 }', '- { hole: a, daimeter: 1 }')
    expect(findingsOf(twice).map(({ rule, line }) => [rule, line])).toEqual([
      ['duplicate-id', 9],
      ['unknown-key', 9],
    ])
  })

  it("is no side's", () => {
    expect(onlyFindingOf(withCut('hole: left', 'diameter: 1')).rule).toBe('reserved-name')
  })

  it('of a size is letters, digits and _, and means nothing else', () => {
    const named = (name: string) => onlyFindingOf(`${withPart()}let: { ${name}: 1 }\n`)
    expect(named('a-b')).toMatchObject({ rule: 'not-a-name', facts: { nearest: 'a_b' } })
    expect(named('3x').rule).toBe('not-a-name')
    for (const name of ['x', 'mm', 'in', 'min', 'unknown', 'length', 'center']) {
      expect(named(name)).toMatchObject({ rule: 'reserved-name', facts: { name } })
    }
  })
})

describe('a size that is none', () => {
  it('is told at the letter that is wrong', () => {
    const size = (written: string) => onlyFindingOf(withCut('hole: peg', `diameter: ${written}`))
    expect(size('about three')).toMatchObject({ rule: 'not-a-size', line: 9 })
    expect(size('1 // 2')).toMatchObject({ rule: 'not-a-size', line: 9, column: 20 })
    expect(size('"1 // 2"')).toMatchObject({ rule: 'not-a-size', line: 9, column: 21 })
    expect(size(`'1' // 2'`.replace("1'", "1''"))).toMatchObject({ line: 9, column: 23 })
    expect(size('"\\x31\\x20// 2"')).toMatchObject({ line: 9, column: 27 })
  })

  it('among several is told in its own place', () => {
    const text = withPart().replace('12 x 2 x 3/4', '12 x 2 ! 1 x 3/4')
    expect(onlyFindingOf(text)).toMatchObject({ rule: 'not-a-size', line: 6, column: 18 })
  })

  it('has too many or too few of them', () => {
    for (const size of ['12', '1 x 2 x 3 x 4']) {
      const text = withPart().replace('12 x 2 x 3/4', size)
      expect(onlyFindingOf(text)).toMatchObject({ rule: 'not-a-size', line: 6, column: 11 })
    }
    expect(onlyFindingOf(withCut('slot: a', 'size: 1 x 2 x 3')).facts).toMatchObject({
      why: 'dimension-count',
    })
  })
})

describe('a position', () => {
  const at = (...lines: readonly string[]) => onlyFindingOf(withCut('hole: peg', 'diameter: 1', ...lines))

  it('takes no distance from a side that its face does not run to', () => {
    expect(at('at: { left: 1, front: 2 }')).toEqual({
      rule: 'side-off-face',
      line: 10,
      column: 22,
      facts: { found: 'front', on: 'front', allowed: 'left or right, and bottom or top' },
    })
    expect(at('on: left', 'at: { left: 1 }').facts).toMatchObject({
      allowed: 'front or back, and bottom or top',
    })
  })

  it('takes one distance in each direction', () => {
    expect(at('at: { left: 1, right: center }')).toMatchObject({
      rule: 'not-both',
      facts: { first: 'left', second: 'right' },
    })
  })

  it('of a notch runs along its edge', () => {
    const notch = onlyFindingOf(withCut('notch: a', 'on: top', 'at: { bottom: 1 }', 'size: 1 x 1'))
    expect(notch.facts).toEqual({ found: 'bottom', on: 'top', allowed: 'left or right' })
  })
})

describe('corners', () => {
  it('are round or chamfered, not both, and something', () => {
    expect(onlyFindingOf(withPart('corners: { round: 1, chamfer: 1 }')).rule).toBe('not-both')
    expect(onlyFindingOf(withPart('corners: { top-left: { round: 1, chamfer: 1 } }')).rule).toBe('not-both')
    expect(onlyFindingOf(withPart('corners: { top-left: {} }')).rule).toBe('missing-key')
    expect(onlyFindingOf(withPart('corners: { top_left: 1 }')).facts).toMatchObject({ nearest: 'top-left' })
    expect(findingsOf(withPart('corners: { chamfer: 1/8 }'))).toEqual([])
  })
})

describe('faults', () => {
  it('come all in one run, in the order of the file, with the part and the cut they lie in', () => {
    const text = withPart(
      'make: many',
      'cuts:',
      '- hole: peg',
      '  diameter: 1 /',
      '- slot: gap',
      '  size: 1 x 2',
      '  ends: pointed',
      'colour: red',
    )
    const { plan, findings } = readPlan(`${text}title2: x\n`, 'plan.yaml')
    expect(plan).toBeUndefined()
    const seen = findings.map(({ rule, places: [place] }) => [rule, place?.part, place?.feature])
    expect(seen).toEqual([
      ['not-a-count', 'beam', undefined],
      ['not-a-size', 'beam', 'peg'],
      ['not-a-choice', 'beam', 'gap'],
      ['unknown-key', 'beam', undefined],
      ['unknown-key', undefined, undefined],
    ])
  })

  it('that an alias repeats are told once', () => {
    const text = withPart(
      'cuts:',
      '- hole: a',
      '  at: &p { lft: 1 }',
      '  diameter: 1',
      '- hole: b',
      '  at: *p',
      '  diameter: 1',
    )
    expect(onlyFindingOf(text)).toMatchObject({ rule: 'unknown-key', line: 9 })
  })
})
