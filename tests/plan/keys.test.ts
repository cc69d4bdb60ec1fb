import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { readPlan } from '../../src/plan/read-plan.ts'
import { findingsOf, onlyFindingOf, withCut, withPart } from './reading.ts'

describe('a key', () => {
  it('that is not known is told with the nearest one and all that are', () => {
    const stock = onlyFindingOf(`${withPart()}stock: { plank: { tickness: 1 } }\n`)
    expect(stock).toEqual({
      rule: 'unknown-key',
      line: 7,
      column: 19,
      facts: {
        found: 'tickness',
        within: 'a stock',
        nearest: 'thickness',
        allowed: 'thickness, width, length, count, wood, label',
      },
    })
  })

  it('that resembles nothing is told without a nearest one', () => {
    const { facts } = onlyFindingOf(withPart('colour: red'))
    expect(facts).toMatchObject({ found: 'colour', within: 'a part' })
    expect(facts).not.toHaveProperty('nearest')
  })

  it('that is misspelt does not also count as missing', () => {
    expect(onlyFindingOf(withCut('hole: peg', 'daimeter: 1')).rule).toBe('unknown-key')
  })

  it('that is missing is told at the name of what lacks it', () => {
    const hole = onlyFindingOf(withCut('hole: peg'))
    expect(hole).toMatchObject({ rule: 'missing-key', line: 8, column: 7 })
    expect(hole.facts).toMatchObject({ key: 'diameter', within: 'a hole' })
    const part = onlyFindingOf('paperjig: 1\ntitle: T\nunits: mm\nparts:\n  arm:\n    make: 2\n')
    expect(part).toMatchObject({ rule: 'missing-key', line: 5, column: 3, facts: { key: 'size' } })
  })

  it('that stands twice is told at the second, with the place of the first', () => {
    const { findings } = readPlan(withPart('make: 2', 'note: x', 'make: 3'), 'plan.yaml')
    expect(findings).toHaveLength(1)
    expect(findings[0]).toMatchObject({ rule: 'duplicate-key', facts: { key: 'make' } })
    const [second, first] = findings[0]!.places
    expect(second!.source!.from).toBeGreaterThan(first!.source!.from)
  })

  it('cannot reach into the program', () => {
    for (const key of ['__proto__', 'constructor', 'toString', 'hasOwnProperty']) {
      expect(onlyFindingOf(withPart(`${key}: 1`))).toMatchObject({
        rule: 'unknown-key',
        facts: { found: key },
      })
    }
    expect(findingsOf(`${withPart()}let: { constructor: 1, toString: 2 }\n`)).toEqual([])
    expect(onlyFindingOf(`${withPart()}let: { __proto__: 1 }\n`).rule).toBe('not-a-name')
    expect(onlyFindingOf(withPart('__proto__: { size: 1 }')).rule).toBe('unknown-key')
    expect(Object.prototype).not.toHaveProperty('size')
  })

  it('of a later version says so and is no typing error', () => {
    const facts = onlyFindingOf(withPart('grain: along'))
    expect(facts).toMatchObject({ rule: 'later-key', facts: { found: 'grain' } })
  })

  it('that the description of the plan file has is known', () => {
    const text = readFileSync(new URL('fixtures/plans/the-contract.yaml', import.meta.url), 'utf8')
    expect(findingsOf(text)).toEqual([])
  })
})

describe('a cut', () => {
  it('of an unknown kind or none is told as such', () => {
    expect(onlyFindingOf(withCut('hoel: peg', 'diameter: 1'))).toMatchObject({
      rule: 'unknown-key',
      facts: {
        nearest: 'hole',
        allowed:
          'hole, row, grid, hole-circle, slot, notch, cut-out, groove, rebate, bevel, chamfer, round-over, engrave',
      },
    })
    expect(onlyFindingOf(withCut('at: center')).rule).toBe('cut-kind-missing')
    expect(onlyFindingOf(withCut('hole: a', 'slot: b'))).toMatchObject({
      rule: 'two-cut-kinds',
      line: 9,
      facts: { first: 'hole', second: 'slot' },
    })
  })

  it('is one item of a list', () => {
    expect(onlyFindingOf(withPart('cuts: { hole: a, diameter: 1 }')).rule).toBe('wrong-kind')
    expect(onlyFindingOf(withCut('hole')).facts).toMatchObject({ found: 'a text', text: 'hole' })
  })
})

describe('a plan that is no plan', () => {
  it('is told by what it is', () => {
    for (const empty of ['', '   ', '\n\n', '# nothing yet\n', '---\n']) {
      expect(onlyFindingOf(empty)).toMatchObject({ rule: 'empty-plan', line: 1, column: 1 })
    }
    expect(onlyFindingOf('hello')).toMatchObject({ rule: 'wrong-kind', facts: { text: 'hello' } })
    expect(onlyFindingOf('- a\n- b\n')).toMatchObject({ rule: 'wrong-kind', facts: { found: 'a list' } })
    expect(onlyFindingOf('title: Loom\n')).toMatchObject({ rule: 'missing-key', facts: { key: 'paperjig' } })
  })

  it('of another version is not looked at further', () => {
    for (const version of ['2', '1.0', 'one', '"01"']) {
      const finding = onlyFindingOf(`paperjig: ${version}\nwhatever: 3\n`)
      expect(finding).toMatchObject({ rule: 'wrong-version', line: 1, column: 11, facts: { wanted: '1' } })
    }
  })

  it('has no parts', () => {
    const finding = onlyFindingOf('paperjig: 1\ntitle: T\nunits: mm\nparts: {}\n')
    expect(finding).toMatchObject({ rule: 'nothing-in-it', line: 4, facts: { key: 'parts' } })
  })
})
