import { expect, it } from 'vitest'
import type { Finding } from '../../src/finding/finding.ts'
import { jsonReport, jsonText } from '../../src/finding/report/json.ts'

const text = 'paperjig: 1\nparts:\n  beam:\n    tickness: 3\n'
const texts = new Map([['loom.yaml', text]])
const style = { unit: 'mm', precision: 0.1 } as const

const unknownKey: Finding = {
  rule: 'unknown-key',
  severity: 'error',
  places: [{ source: { file: 'loom.yaml', from: 31, to: 39 }, part: 'beam' }],
  facts: { found: 'tickness', within: 'a part', allowed: 'size' },
}
const outside: Finding = {
  rule: 'outside-part',
  severity: 'warning',
  places: [{ part: 'beam', piece: 'beam/2', feature: 'peg', side: 'front' }],
  measured: { value: 0.1 + 0.2, unit: 'mm' },
  limit: { value: 0, unit: 'mm' },
  facts: { what: 'hole', beyond: 'left end' },
}

it('the report is that of the contract', () => {
  expect(jsonReport('Loom', [unknownKey, outside], texts, style)).toEqual({
    paperjig: 1,
    plan: 'Loom',
    findings: [
      {
        rule: 'unknown-key',
        severity: 'error',
        message: '"tickness" is no key of a part (known: size)',
        places: [{ file: 'loom.yaml', line: 4, column: 5, part: 'beam' }],
        facts: { found: 'tickness', within: 'a part', allowed: 'size' },
      },
      {
        rule: 'outside-part',
        severity: 'warning',
        message: expect.stringContaining('past the left end'),
        places: [{ part: 'beam', piece: 'beam/2', feature: 'peg', side: 'front' }],
        measured: { value: 0.3, unit: 'mm' },
        limit: { value: 0, unit: 'mm' },
        facts: { what: 'hole', beyond: 'left end' },
      },
    ],
  })
})

it('a plan that cannot be read is null, and a text that is not at hand has no line', () => {
  const report = jsonReport(undefined, [unknownKey], new Map(), style)
  expect(report.plan).toBeNull()
  expect(report.findings[0]?.places).toEqual([{ file: 'loom.yaml', part: 'beam' }])
})

it('as text it reads back the same and holds nothing that cannot be seen', () => {
  const report = jsonReport('a\u202eb\u009b31m 木', [unknownKey], texts, style)
  const written = jsonText(report)
  expect(JSON.parse(written)).toEqual(report)
  expect(written).toMatch(/^[^\u202e\u009b]*\n$/)
  expect(written).toContain('木')
})

it('a place on a face is given in the millimetres of the face, rounded to a nanometre', () => {
  const marked: Finding = {
    rule: 'diameter-missing',
    severity: 'error',
    places: [{ part: 'beam', at: { face: 'edge:nose', x: 1 / 3, y: -0 } }],
    facts: { what: 'hole', wanted: 'diameter' },
  }
  const report = jsonReport('Loom', [marked], new Map(), style)
  expect(report.findings[0]?.places).toEqual([{ part: 'beam', at: { face: 'edge:nose', x: 0.333333, y: 0 } }])
})
