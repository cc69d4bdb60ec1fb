import { describe, expect, it } from 'vitest'
import { findingsOf, onlyFindingOf, planOf, withCut, withPart } from './reading.ts'

/** The plan of one hole, whose further keys begin on line 10. */
const hole = (...keys: readonly string[]) => withCut('hole: peg', 'diameter: 1/4', ...keys)

/** The text without the ^ that stands before the fault, and the line and column of the fault. */
function marked(text: string) {
  const before = text.slice(0, text.indexOf('^')).split('\n')
  return { text: text.replace('^', ''), at: { line: before.length, column: before.at(-1)!.length + 1 } }
}

function holeIn(text: string) {
  const [cut] = planOf(text).parts[0]!.cuts
  if (cut?.kind !== 'hole') throw new Error('no hole')
  return cut
}

describe('a lean', () => {
  it('is toward a side, by an angle', () => {
    const { leans } = holeIn(hole('lean: { toward: right, angle: 8 }'))
    expect(leans).toMatchObject([{ toward: { value: 'right' }, angle: { size: { written: '8' } } }])
  })

  it('may be two, for rake and splay, and is none where the plan is silent', () => {
    const both = holeIn(hole('lean: [{ toward: left, angle: 8 }, { toward: bottom, angle: 5 1/2 }]'))
    expect(both.leans.map(({ toward }) => toward.value)).toEqual(['left', 'bottom'])
    expect(holeIn(hole('lean: [{ toward: left, angle: 8 }]')).leans).toHaveLength(1)
    expect(holeIn(hole('depth: 1/8')).leans).toEqual([])
  })

  it('may use the maker’s own word for a side', () => {
    const sides = 'sides: { left: nose, top: rail }'
    const cut =
      '- { hole: peg, diameter: 1/4, lean: [{ toward: nose, angle: 8 }, { toward: rail, angle: 5 }] }'
    const { leans } = holeIn(withPart(sides, 'cuts:', cut))
    expect(leans.map(({ toward }) => toward.value)).toEqual(['left', 'top'])
  })

  it.each([
    [
      'lean: { toward: ^front, angle: 8 }',
      'lean-off-face',
      { found: 'front', on: 'front', allowed: 'left, right, bottom, top' },
    ],
    ['lean: { toward: ^start, angle: 8 }', 'lean-off-face', { found: 'start' }],
    ['lean: { toward: ^rigth, angle: 8 }', 'not-a-choice', { found: 'rigth', nearest: 'right' }],
    ['^lean: { toward: right }', 'missing-key', { key: 'angle', within: 'a lean' }],
    ['^lean: { angle: 8 }', 'missing-key', { key: 'toward', within: 'a lean' }],
    ['lean: { toward: right, ^angel: 8 }', 'unknown-key', { found: 'angel', nearest: 'angle' }],
    ['lean: { toward: right, angle: steep^; }', 'not-a-size', { found: ';' }],
    [
      'lean: [{ toward: left, angle: 8 }, { toward: ^right, angle: 5 }]',
      'leans-alike',
      { first: 'left', second: 'right', allowed: 'bottom, top' },
    ],
    [
      'lean: [{ toward: top, angle: 8 }, { toward: ^top, angle: 5 }]',
      'leans-alike',
      { first: 'top', second: 'top', allowed: 'left, right' },
    ],
    [
      'lean: ^[{ toward: top, angle: 8 }, { toward: left, angle: 5 }, { toward: right, angle: 5 }]',
      'limit-passed',
      { of: 'leans of one hole' },
    ],
    ['lean: ^[]', 'nothing-in-it', { key: 'lean' }],
    ['lean: ^8', 'wrong-kind', { text: '8' }],
    ['^lean:', 'missing-value', {}],
  ])('%s is refused at the ^', (keys, rule, facts) => {
    const { text, at } = marked(hole(keys))
    expect(onlyFindingOf(text)).toMatchObject({ rule, ...at, facts })
  })

  it('runs the way its own face does', () => {
    expect(findingsOf(hole('on: top', 'lean: { toward: front, angle: 8 }'))).toEqual([])
    expect(onlyFindingOf(hole('on: top', 'lean: { toward: bottom, angle: 8 }')).facts).toMatchObject({
      on: 'top',
      allowed: 'left, right, front, back',
    })
    expect(findingsOf(hole('on: [front, back]', 'lean: { toward: top, angle: 8 }'))).toEqual([])
  })

  it('is a key of every cut that is bored, and of no other', () => {
    const lean = 'lean: { toward: right, angle: 8 }, countersink: 3/8, bit: brad'
    for (const cut of [
      'hole: a, diameter: 1/4',
      'row: a, toward: right, spacing: 1, count: 3, diameter: 1/4',
      'grid: a, spacing: 1, count: 2 x 2, diameter: 1/4',
      'hole-circle: a, circle: 1, count: 3, diameter: 1/4',
    ]) {
      expect(findingsOf(withPart('cuts:', `- { ${cut}, ${lean} }`))).toEqual([])
    }
    for (const cut of ['slot: a, size: 1 x 1/4', 'notch: a, size: 1 x 1/4', 'cut-out: a, size: 1 x 1/4']) {
      const found = findingsOf(withPart('cuts:', `- { ${cut}, ${lean} }`))
      expect(found.map(({ rule, facts }) => [rule, facts])).toMatchObject([
        ['unknown-key', { found: 'lean' }],
        ['unknown-key', { found: 'countersink' }],
        ['unknown-key', { found: 'bit' }],
      ])
    }
  })
})

describe('a mouth', () => {
  it('is a counterbore by its diameter and depth, or a countersink by its diameter and perhaps its angle', () => {
    expect(holeIn(hole('counterbore: 1/2 x 3/16')).mouth).toMatchObject({
      kind: 'counterbore',
      diameter: { size: { written: '1/2' } },
      depth: { size: { written: '3/16' } },
    })
    expect(holeIn(hole('countersink: 3/8')).mouth).toMatchObject({ kind: 'countersink' })
    expect(holeIn(hole('countersink: 3/8')).mouth).not.toHaveProperty('angle')
    expect(holeIn(hole('countersink: { diameter: 3/8, angle: 90 }')).mouth).toHaveProperty('angle')
  })

  it.each([
    ['counterbore: ^1/2', 'not-a-size', {}],
    ['counterbore: ^1/2 x 3/16 x 1', 'not-a-size', { found: '3 sizes' }],
    ['^counterbore: { diameter: 1/2 }', 'missing-key', { key: 'depth', within: 'a counterbore' }],
    ['counterbore: { diameter: 1/2, depth: 1/8, ^angle: 4 }', 'unknown-key', { found: 'angle' }],
    ['countersink: 3/8 ^x 1/4', 'not-a-size', {}],
    ['^countersink: { angle: 82 }', 'missing-key', { key: 'diameter', within: 'a countersink' }],
    ['countersink: ^[3/8]', 'wrong-kind', { found: 'a list' }],
    ['^counterbor: 1/2 x 1/8', 'unknown-key', { nearest: 'counterbore' }],
  ])('%s is refused at the ^', (keys, rule, facts) => {
    const { text, at } = marked(hole(keys))
    expect(onlyFindingOf(text)).toMatchObject({ rule, ...at, facts })
  })

  it('is one of the two', () => {
    expect(onlyFindingOf(hole('counterbore: 1/2 x 1/8', 'countersink: 3/8'))).toMatchObject({
      rule: 'not-both',
      line: 11,
      column: 7,
      facts: { first: 'counterbore', second: 'countersink' },
    })
  })
})

describe('a bit', () => {
  it('is known by its point, a twist drill perhaps by its angle too', () => {
    expect(holeIn(hole('bit: brad')).bit).toMatchObject({ point: { value: 'brad' } })
    expect(holeIn(hole('bit: { point: twist, angle: 135 }')).bit).toMatchObject({
      point: { value: 'twist' },
      angle: { size: { written: '135' } },
    })
  })

  it.each([
    ['bit: ^spade', 'not-a-choice', { found: 'spade', of: 'the point of a bit' }],
    ['bit: { point: brad, ^angle: 90 }', 'not-both', { first: 'a brad point', second: 'angle' }],
    ['^bit: { angle: 90 }', 'missing-key', { key: 'point', within: 'a bit' }],
    ['bit: ^1/4', 'not-a-choice', { found: '1/4' }],
  ])('%s is refused at the ^', (keys, rule, facts) => {
    const { text, at } = marked(hole(keys))
    expect(onlyFindingOf(text)).toMatchObject({ rule, ...at, facts })
  })
})

describe('how a part goes from paper to wood', () => {
  it('is said for all parts, and for one', () => {
    const plan = planOf(
      withPart('transfer: mark-out', 'wrap: net', 'measured: 12 1/64 x 2 x 3/4').replace(
        'units: inch',
        'units: inch\ntransfer: template\nprojection: first',
      ),
    )
    expect([plan.transfer?.value, plan.projection?.value]).toEqual(['template', 'first'])
    const [part] = plan.parts
    expect([part?.transfer?.value, part?.wrap?.value]).toEqual(['mark-out', 'net'])
    expect(part?.measured?.map(({ size }) => size.written.trim())).toEqual(['12 1/64', '2', '3/4'])
  })

  it.each([
    ['transfer: ^markout', 'not-a-choice', { nearest: 'mark-out', allowed: 'template, mark-out, auto' }],
    ['wrap: ^box', 'not-a-choice', { allowed: 'panels, net' }],
    ['measured: ^12 x 2', 'not-a-size', { found: '2 sizes' }],
    ['measured: ^{ length: 12 }', 'wrong-kind', { found: 'a group of keys' }],
  ])('%s in a part is refused at the ^', (keys, rule, facts) => {
    const { text, at } = marked(withPart(keys))
    expect(onlyFindingOf(text)).toMatchObject({ rule, ...at, facts })
  })

  it.each([
    ['transfer: glue', 'a way from paper to wood'],
    ['projection: second', 'a way to set out views'],
  ])('%s of a plan is refused', (line, of) => {
    expect(onlyFindingOf(`${withPart()}${line}\n`)).toMatchObject({
      rule: 'not-a-choice',
      line: 7,
      facts: { of },
    })
  })
})
