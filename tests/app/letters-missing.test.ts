import { expect, test } from 'vitest'
import { printPdf } from '../../src/app/print-pdf.ts'
import { printSvg } from '../../src/app/print-svg.ts'
import { surroundings } from './surroundings.ts'

const plan = (title: string, part: string) => ({
  text: `paperjig: 1\ntitle: ${title}\nunits: mm\nparts:\n  post: { size: 160 x 40 x 20, ${part} }\n`,
  file: 'gate.yaml',
})

const codesOf = (title: string, part = '') => {
  const { findings } = printSvg(plan(title, part), {}, surroundings)
  const missing = findings.flatMap(f => (f.rule === 'letters-missing' ? [f] : []))
  expect(missing.every(f => f.severity === 'warning')).toBe(true)
  return missing.map(f => f.facts.codes)
}

test.each(['Gate', 'Grîmper Øresund Łódź', 'Ворота', 'Πύλη', 'gate, 1:16 – ⅜ × ½'])(
  '"%s" is printed as it is, without a warning',
  title => {
    expect(codesOf(title)).toEqual([])
  },
)

test.each([
  ['the title', '門', '', 'U+9580'],
  ['a label', 'Gate', 'label: "柱 post"', 'U+67F1'],
  ['a note', 'Gate', 'note: "柱"', 'U+67F1'],
])('a letter in %s that the font lacks is a warning with its code', (_, title, part, code) => {
  expect(codesOf(title, part)).toEqual([code])
})

test('each letter is named once, in one warning for all', () => {
  expect(codesOf('門門柱', 'label: "門"')).toEqual(['U+9580, U+67F1'])
})

test('of very many the first are named', () => {
  const title = Array.from({ length: 40 }, (_, i) => String.fromCodePoint(0x4e00 + i)).join('')
  const [codes] = codesOf(title)
  expect(codes).toMatch(/^U\+4E00, .* and others$/)
  expect(codes!.split(',')).toHaveLength(12)
})

test('a warning stops nothing', async () => {
  const printed = await printPdf(plan('門', ''), { sheets: ['template'] }, surroundings)
  expect(printed.pages).toBe(1)
  expect(printed.pdf).toBeDefined()
})
