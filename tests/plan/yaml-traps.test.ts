import { describe, expect, it } from 'vitest'
import { readPlan } from '../../src/plan/read-plan.ts'
import { findingsOf, onlyFindingOf, withCut, withPart } from './reading.ts'

describe("YAML's own traps are told by name", () => {
  it('a colon without a space in braces', () => {
    expect(onlyFindingOf(withCut('hole: peg', 'diameter: 1', 'at: { left: 3/8, bottom:5/8 }'))).toEqual({
      rule: 'colon-without-space',
      line: 10,
      column: 24,
      facts: { key: 'bottom', value: '5/8' },
    })
  })

  it('a colon without a space between other keys, before them and after them', () => {
    for (const lines of [['make:2', 'note: x'], ['note: x', 'make:2'], ['make:2']]) {
      const finding = onlyFindingOf(withPart(...lines))
      const line = 7 + lines.indexOf('make:2')
      expect(finding).toMatchObject({ rule: 'colon-without-space', line, column: 5 })
      expect(finding.facts).toEqual({ key: 'make', value: '2' })
    }
  })

  it('a colon without a space in every line of a group, and behind the key of the group', () => {
    for (const at of [['at:', '  left:3/8', '  bottom:5/8'], ['at: left:3/8']]) {
      const finding = onlyFindingOf(withCut('hole: peg', 'diameter: 1', ...at))
      expect(finding).toMatchObject({ rule: 'colon-without-space', facts: { key: 'left', value: '3/8' } })
    }
  })

  it('a hyphen without a space', () => {
    const finding = onlyFindingOf(withPart('cuts:', '-hole: peg', ' diameter: 1'))
    expect(finding).toMatchObject({ rule: 'not-yaml', line: 8, column: 5 })
    expect(finding.facts).toEqual({ found: '-hole: peg', wanted: 'a space behind the -' })
  })

  it('a # that makes a comment of the value', () => {
    const facts = { key: 'diameter', comment: '#4' }
    const open = onlyFindingOf(withCut('hole: peg', 'diameter: #4'))
    expect(open).toEqual({ rule: 'comment-eats-value', line: 9, column: 17, facts })
    const inBraces = onlyFindingOf(withPart('cuts:', '  - { hole: peg, diameter: #4 }'))
    expect(inBraces).toEqual({ rule: 'comment-eats-value', line: 8, column: 32, facts })
  })

  it('a # that takes a number off the end of a text, as a warning', () => {
    const text = withPart('label: Beam #4')
    expect(onlyFindingOf(text)).toEqual({
      rule: 'comment-in-text',
      line: 7,
      column: 17,
      facts: { value: 'Beam', comment: '#4' },
    })
    const { plan, findings } = readPlan(text, 'plan.yaml')
    expect(findings[0]?.severity).toBe('warning')
    expect(plan?.parts[0]?.label?.value).toBe('Beam')
  })

  it('but an ordinary comment is no fault', () => {
    for (const line of ['label: Beam # the fourth', 'label: Beam #the fourth', '# 4', '#4']) {
      expect(findingsOf(withPart(line))).toEqual([])
    }
  })

  it('a comma inside braces', () => {
    const text = onlyFindingOf(withPart('cuts:', '  - { hole: peg, note: big, round one, diameter: 1 }'))
    expect(text).toMatchObject({ rule: 'comma-in-braces', line: 8, column: 33 })
    expect(text.facts).toEqual({ found: 'round one', before: 'note' })
    const decimal = onlyFindingOf(withCut('hole: peg', 'diameter: 1', 'at: { left: 3,5 }'))
    expect(decimal.facts).toEqual({ found: '5', before: 'left' })
  })

  it('a bare ~', () => {
    const finding = onlyFindingOf(withCut('hole: peg', 'diameter: ~'))
    expect(finding).toEqual({ rule: 'bare-tilde', line: 9, column: 17, facts: { key: 'diameter' } })
    expect(onlyFindingOf(withCut('hole: peg', 'at: { left: ~ }', 'diameter: 1')).rule).toBe('bare-tilde')
  })

  it('a colon and a space inside a text', () => {
    const finding = onlyFindingOf('paperjig: 1\ntitle: Loom 1: 16\nunits: inch\nparts: {}\n')
    expect(finding).toEqual({ rule: 'colon-in-text', line: 2, column: 8, facts: { text: 'Loom 1: 16' } })
    expect(onlyFindingOf(withPart('cuts: [{ hole: peg, note: a b: c }]')).rule).toBe('colon-in-text')
  })

  it('a tab for spaces', () => {
    const finding = onlyFindingOf('paperjig: 1\ntitle: Loom\nunits: inch\nparts:\n\tbeam: {}\n')
    expect(finding).toEqual({ rule: 'tab-indent', line: 5, column: 1, facts: {} })
  })

  it('an inch mark inside double quotes', () => {
    const finding = onlyFindingOf(withCut('hole: peg', 'diameter: "5/8""'))
    expect(finding).toMatchObject({ rule: 'not-yaml', line: 9, column: 22 })
    expect(finding.facts).toMatchObject({ wanted: expect.stringContaining('single quotes') })
  })

  it('a quotation and a bracket that never end, at their beginning', () => {
    expect(onlyFindingOf(withPart('label: "Beam', 'make: 2'))).toMatchObject({ line: 7, column: 12 })
    expect(onlyFindingOf(withPart('corners: { round: 1', 'make: 2'))).toMatchObject({ line: 7, column: 14 })
  })

  it('a text that begins with a character that means something to YAML', () => {
    const rules = (value: string) => onlyFindingOf(withPart(`label: ${value}`))
    expect(rules('!important')).toMatchObject({ rule: 'tag-refused', facts: { tag: '!important' } })
    expect(rules('*new*')).toMatchObject({ rule: 'alias-unknown', column: 12, facts: { name: 'new*' } })
    for (const value of ['@ 3', '`x`', '%3', '[draft] beam', '{a} b', '> 5 mm', '| a', '"a" b']) {
      expect(rules(value)).toMatchObject({ rule: 'not-yaml', line: 7 })
    }
  })

  it('a tag, a merge key, an alias of itself, a key that is no word', () => {
    expect(onlyFindingOf(withPart('label: !!js/function "x"')).rule).toBe('tag-refused')
    expect(onlyFindingOf(withPart('label: !!binary "x"')).rule).toBe('tag-refused')
    expect(onlyFindingOf(withPart('<<: { make: 2 }')).rule).toBe('merge-key')
    expect(onlyFindingOf(withPart('corners: &a { top-left: *a }'))).toMatchObject({
      rule: 'alias-loop',
      facts: { name: 'a' },
    })
    expect(onlyFindingOf(withPart('? [make]', ': 2')).rule).toBe('key-not-text')
    expect(onlyFindingOf(withPart(': 2')).rule).toBe('key-not-text')
  })

  it('a second document and another YAML', () => {
    expect(onlyFindingOf(`${withPart()}---\ntitle: x\n`)).toMatchObject({ rule: 'second-document', line: 7 })
    expect(onlyFindingOf(`%YAML 1.1\n---\n${withPart()}`)).toMatchObject({
      rule: 'yaml-version',
      facts: { found: '1.1' },
    })
  })

  it('several in one file, each once, in the order of the file', () => {
    const text = withPart('make:2', 'note: x', 'cuts:', '- hole: peg', '  note: [a] b', '  at: @')
    expect(findingsOf(text).map(({ rule, line }) => [rule, line])).toEqual([
      ['colon-without-space', 7],
      ['not-yaml', 11],
      ['not-yaml', 12],
    ])
  })
})
