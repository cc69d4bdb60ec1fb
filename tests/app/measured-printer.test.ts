import { expect, test } from 'vitest'
import { knownPrinter } from '../../src/app/known-printer.ts'
import { measuredPrinter } from '../../src/app/measured-printer.ts'

const typed = { name: 'attic', across: '179.1', along: '238.8' }

test('readings may have any unit, and a bare number is millimetres', () => {
  const same = [
    { across: '179.1', along: '238.8' },
    { across: '17.91 cm', along: '238.8 mm' },
    { across: `${179.1 / 25.4}"`, along: `${238.8 / 25.4} in` },
  ]
  for (const readings of same) {
    const measured = measuredPrinter({ name: 'attic', ...readings })
    if (!('printer' in measured)) throw new Error('refused')
    expect(measured.printer.across).toBeCloseTo(0.995, 9)
    expect(measured.printer.along).toBeCloseTo(0.995, 9)
    expect(measured.printer.lean).toBe(0)
  }
})

test('fractions off an inch rule are read', () => {
  const measured = measuredPrinter({ name: 'attic', across: '7 5/64"', along: '9 29/64"' })
  expect(measured).toMatchObject({ printer: { across: expect.closeTo((7 + 5 / 64) * (25.4 / 180), 9) } })
})

const rulesOf = (more: Partial<Parameters<typeof measuredPrinter>[0]>) => {
  const measured = measuredPrinter({ ...typed, ...more })
  return 'findings' in measured ? measured.findings.map(({ rule }) => rule) : []
}

test.each([
  [{}, []],
  [{ across: 'about 7' }, ['reading-not-a-length']],
  [{ across: '-3' }, ['reading-not-a-length']],
  [{ across: '', along: 'unknown' }, ['reading-not-a-length', 'reading-not-a-length']],
  [{ name: '' }, ['unusable-printer-name']],
  [{ bars: '18x24' }, ['unknown-bars']],
  [{ bars: '185x240' }, ['unknown-bars']],
  [{ bars: '120x170', across: '119.5', along: '169.2' }, []],
  [{ across: '238.8', along: '179.1' }, ['readings-swapped']],
  [{ across: '169.4', along: '225.9' }, ['printer-too-far-off']],
  [{ diagonals: ['211.1', '211.0'] }, []],
  [{ diagonals: ['211.1', 'x'] }, ['reading-not-a-length']],
  [{ diagonals: ['150', '150'] }, ['diagonals-disagree']],
  [{ across: '180', along: '240', diagonals: ['218', '206'] }, ['printer-leans']],
] as const)('readings %j give the findings %j', (more, rules) => {
  expect(rulesOf(more)).toEqual(rules)
})

test('“fit to page” of Letter on Letter is named where the readings match it', () => {
  // a page of 8.5 in fitted between edges of a quarter inch: 8/8.5
  const factor = 8 / 8.5
  const measured = measuredPrinter({ name: 'attic', across: `${180 * factor}`, along: `${240 * factor}` })
  expect(measured).toMatchObject({
    findings: [{ rule: 'printer-too-far-off', facts: { page: 'Letter', sheet: 'Letter' } }],
  })
})

test('a printer that was never measured is said to be unknown, with the nearest that was', () => {
  const attic = { name: 'attic', across: 1, along: 1, lean: 0 }
  expect(knownPrinter('attic', [attic])).toEqual({ printer: attic })
  expect(knownPrinter('attik', [attic])).toMatchObject({
    finding: { rule: 'unknown-printer', facts: { found: 'attik', nearest: 'attic', allowed: 'attic' } },
  })
})
