import { expect, test } from 'vitest'
import { printPdf } from '../../src/app/print-pdf.ts'
import { printSvg } from '../../src/app/print-svg.ts'
import { readModel } from '../../src/app/read-model.ts'
import { surroundings } from './surroundings.ts'

const gate = `paperjig: 1
title: Gate
units: mm
parts:
  post: { size: 160 x 30 x 20, make: 2, mirrored: true, cuts: [ { hole: hinge, at: { left: 10, bottom: center }, diameter: 6 } ] }
  rail: { size: 120 x 20 x 10 }
`
const plan = (text: string) => ({ text, file: 'gate.yaml' })
const rules = (found: { findings: readonly { rule: string }[] }) => found.findings.map(f => f.rule)

/** The templates alone, without the cover. */
const templates = { sheets: ['template'] } as const

test('a sound plan gives a template for each piece, and no errors', async () => {
  const printed = await printPdf(plan(gate), templates, surroundings)
  expect([printed.pages, printed.findings.filter(f => f.severity !== 'note')]).toEqual([1, []])
  const svg = printSvg(plan(gate), templates, surroundings)
  expect(svg.files.map(f => f.name)).toEqual([
    'page-1.svg',
    'post-template.svg',
    'post-template-mirrored.svg',
    'rail-template.svg',
  ])
})

test('only the parts asked for are printed, in the order of the plan', () => {
  const { files } = printSvg(plan(gate), { ...templates, parts: ['rail', 'post'] }, surroundings)
  expect(files).toHaveLength(4)
  expect(
    printSvg(plan(gate), { ...templates, parts: ['rail'] }, surroundings).files.map(f => f.name),
  ).toEqual(['page-1.svg', 'rail-template.svg'])
})

test('a part that the plan does not have is an error with the nearest right name, and nothing is printed', async () => {
  const { pages, pdf, findings } = await printPdf(plan(gate), { parts: ['rial', 'post'] }, surroundings)
  expect([pages, pdf]).toEqual([0, undefined])
  expect(findings).toMatchObject([
    {
      rule: 'unknown-part',
      severity: 'error',
      facts: { found: 'rial', nearest: 'rail', allowed: 'post, rail' },
    },
  ])
})

test('a paper that does not exist is an error, and nothing is printed', () => {
  const { pages, files, findings } = printSvg(plan(gate), { paper: 'a44' }, surroundings)
  expect([pages, files]).toEqual([0, []])
  expect(findings).toMatchObject([{ rule: 'unknown-paper', severity: 'error', facts: { nearest: 'a4' } }])
})

test('what is larger than a page goes over several, and never shrinks', async () => {
  const long = gate.replace('160 x 30', '400 x 30')
  const { pages, findings } = await printPdf(plan(long), { ...templates, paper: 'a4' }, surroundings)
  expect(pages).toBeGreaterThan(1)
  expect(rules({ findings })).not.toContain('does-not-fit')
})

test('what the drawing leaves out stops nothing', async () => {
  const lacking = gate.replace('at: { left: 10, bottom: center }, ', '')
  const { pages, findings } = await printPdf(plan(lacking), templates, surroundings)
  expect(pages).toBe(1)
  expect(findings.filter(f => f.severity === 'error').map(f => f.rule)).toEqual(['position-missing'])
})

test('a plan that cannot be read or worked out gives its findings and nothing else', async () => {
  for (const text of ['', 'paperjig: 2', gate.replace('160 x', '160x'), gate.replace('160 x', 'lenth x')]) {
    const { pages, pdf, findings } = await printPdf(plan(text), {}, surroundings)
    expect([pages, pdf]).toEqual([0, undefined])
    expect(findings.length).toBeGreaterThan(0)
    const svg = printSvg(plan(text), {}, surroundings)
    expect([svg.pages, svg.files, rules(svg)]).toEqual([0, [], rules({ findings })])
  }
})

test('a plan in inches goes on Letter and one in millimetres on A4, unless something else is asked for', () => {
  const sizeOf = (text: string, paper?: string) => {
    const { files } = printSvg(plan(text), paper === undefined ? {} : { paper }, surroundings)
    return / width="([\d.]+)mm" height="([\d.]+)mm"/.exec(new TextDecoder().decode(files[0]!.bytes))!.slice(1)
  }
  expect(sizeOf(gate)).toEqual(['210', '297'])
  expect(
    sizeOf(
      gate
        .replace('units: mm', 'units: inch')
        .replaceAll(/(\d+) x (\d+) x (\d+)/g, '$1 mm x $2 mm x $3 mm')
        .replace('left: 10', 'left: 10 mm')
        .replace('diameter: 6', 'diameter: 6 mm'),
    ),
  ).toEqual(['215.9', '279.4'])
  expect(sizeOf(gate, '250x300mm')).toEqual(['250', '300'])
})

test('the same plan gives the same bytes', async () => {
  const [first, second] = [
    await printPdf(plan(gate), {}, surroundings),
    await printPdf(plan(gate), {}, surroundings),
  ]
  expect(first.pdf).toEqual(second.pdf)
  expect(printSvg(plan(gate), {}, surroundings).files).toEqual(printSvg(plan(gate), {}, surroundings).files)
})

test('what the check finds comes with the model, in the order of the text', () => {
  const faulty = gate.replace('bottom: center', 'bottom: 1').replace('120 x 20 x 10', '120 x unknown x 10')
  const { model, findings, title } = readModel(plan(faulty))
  expect([title, model?.parts.map(p => p.id)]).toEqual(['Gate', ['post']])
  expect(findings.map(f => f.rule)).toEqual(['outside-part', 'size-missing'])
})
