import { describe, expect, it } from 'vitest'
import type { Finding, Severity } from '../../src/finding/finding.ts'
import { quoteLine } from '../../src/finding/report/quote-line.ts'
import { terminalReport } from '../../src/finding/report/terminal.ts'
import { readPlan } from '../../src/plan/read-plan.ts'

const style = { unit: 'inch', precision: 25.4 / 64 } as const

const text = `paperjig: 1
title: Loom
units: inch
stock:
  plank: { tickness: 1/2 }
parts:
  beam:
    size: 12 x 2 x 3/4
    label: Beam #2
    cuts:
      - hole: peg
        diameter: two
      - hole: peg
        diameter: 1/4
`

describe('the report on a terminal', () => {
  const { findings } = readPlan(text, 'loom.yaml')

  it('groups by part, errors first, with the line, a caret and the counts', () => {
    expect(terminalReport(findings, { texts: new Map([['loom.yaml', text]]), style })).toBe(
      `plan
  loom.yaml:5:12: error: "tickness" is no key of a stock; did you mean "thickness"? (known: thickness, width, length, count, wood, label)
    5 |   plank: { tickness: 1/2 }
      |            ^^^^^^^^

beam
  loom.yaml:13:15: error: two cuts of this part are called "peg"; give each a name of its own
    13 |       - hole: peg
       |               ^^^
    see loom.yaml:11:15
    11 |       - hole: peg
       |               ^^^
  loom.yaml:9:17: warning: "#2" is read as a comment; if it belongs to the value, put quotes around both: "Beam #2"
    9 |     label: Beam #2
      |                 ^^

2 errors, 1 warning
`,
    )
  })

  it('colours what it is told to colour and nothing else', () => {
    const texts = new Map([['loom.yaml', text]])
    const painted = terminalReport(findings, { texts, style, paint: (role, piece) => `<${role}>${piece}</>` })
    for (const role of ['error', 'warning', 'heading', 'place', 'quotation', 'caret']) {
      expect(painted).toContain(`<${role}>`)
    }
    expect(painted.replace(/<[a-z]*>|<\/>/g, '')).toBe(terminalReport(findings, { texts, style }))
  })

  it('of nothing is nothing found', () => {
    expect(terminalReport([], { texts: new Map(), style })).toBe('nothing found\n')
  })

  it('counts one and many', () => {
    const of = (severity: Severity): Finding => ({ rule: 'empty-plan', severity, places: [], facts: {} })
    const report = terminalReport([of('note'), of('error'), of('warning'), of('note')], {
      texts: new Map(),
      style,
    })
    expect(report).toMatch(
      /error: .*\n {2}warning: .*\n {2}note: .*\n {2}note: .*\n\n1 error, 1 warning, 2 notes\n$/,
    )
  })

  it('lets no text of the maker move the cursor', () => {
    const hostile =
      'paperjig: 1\ntitle: "\\e[2J"\nunits: inch\nparts: { beam: { size: 1 x 1 x 1, "\\e]0;x\\a": 1, si\u202eze: 2 } }\n'
    const { findings } = readPlan(hostile, '\u001b[31m.yaml')
    const texts = new Map([['\u001b[31m.yaml', hostile]])
    const report = terminalReport(findings, { texts, style })
    expect(findings.length).toBeGreaterThan(2)
    expect(report.replaceAll('\n', '')).not.toMatch(/[\p{Cc}\p{Cf}]/u)
  })
})

describe('a quoted line', () => {
  const under = (line: string, from: number, to: number) => {
    const { text, caret } = quoteLine(line, { file: '', from, to })
    return text.slice(caret.indexOf('^'), caret.length)
  }

  it('has the caret under the place, behind tabs and codes too', () => {
    expect(under('a: bc', 3, 5)).toBe('bc')
    expect(under('\t\ta: bc', 5, 7)).toBe('bc')
    expect(under('\u202ea: bc', 4, 6)).toBe('bc')
    expect(under('\uFEFFa: bc', 4, 6)).toBe('bc')
  })

  it('counts two columns for wide letters and none for marks on letters', () => {
    expect(quoteLine('木: bc', { file: '', from: 3, to: 5 }).caret).toBe('    ^^')
    expect(quoteLine('e\u0301: bc', { file: '', from: 4, to: 6 }).caret).toBe('   ^^')
    expect(quoteLine('😀: bc', { file: '', from: 4, to: 6 }).caret).toBe('    ^^')
  })

  it('of a long line shows the stretch around the place', () => {
    const line = `${'x'.repeat(5000)}BAD${'y'.repeat(5000)}`
    const { text, caret } = quoteLine(line, { file: '', from: 5000, to: 5003 })
    expect(text.length).toBeLessThan(110)
    expect(text.slice(caret.indexOf('^'), caret.length)).toBe('BAD')
    expect(text).toMatch(/^….*…$/)
  })

  it('never cuts a character in half', () => {
    const line = '😀'.repeat(200)
    for (const from of [0, 1, 61, 100, 101, 399]) {
      expect(quoteLine(line, { file: '', from, to: from + 50 }).text).not.toContain('U+D')
    }
  })

  it('of a place over several lines marks the first', () => {
    expect(quoteLine('ab\ncd\nef', { file: '', from: 1, to: 7 })).toEqual({
      number: 1,
      text: 'ab',
      caret: ' ^',
    })
    expect(quoteLine('ab\r\ncd', { file: '', from: 0, to: 6 }).caret).toBe('^^')
  })

  it('at the end of the text has one caret', () => {
    expect(quoteLine('ab', { file: '', from: 2, to: 2 })).toEqual({ number: 1, text: 'ab', caret: '  ^' })
    expect(quoteLine('', { file: '', from: 0, to: 0 })).toEqual({ number: 1, text: '', caret: '^' })
  })
})
