import { expect, test } from 'vitest'
import type { SvgChoices } from '../../src/app/inputs.ts'
import { printSvg } from '../../src/app/print-svg.ts'
import { sentence } from '../../src/finding/sentence.ts'
import type { ReadBack, ReadChain } from '../readback/read-back.ts'
import { readSvg } from '../readback/read-svg.ts'
import { surroundings } from './surroundings.ts'

const text = `paperjig: 1
title: Loom
units: mm
parts:
  heddle:
    size: 120 x 40 x 6
    cuts:
      - { hole: pivot, at: { left: 20, bottom: center }, diameter: 8 }
      - { slot: eye, at: { left: 60, bottom: center }, size: 30 x 0.4 }
`

function printed(svg: SvgChoices) {
  return printSvg({ text, file: 'loom.yaml' }, { sheets: ['template'] }, surroundings, svg)
}

function read(svg: SvgChoices, name: string): ReadBack {
  const { bytes } = printed(svg).files.find(file => file.name === name)!
  return readSvg(new TextDecoder().decode(bytes))
}

const [page, alone] = ['page-1.svg', 'heddle-template.svg']

function widthOf({ curves }: ReadChain): number {
  const xs = curves.flatMap(curve => [0, 0.25, 0.5, 0.75].map(t => curve.at(t).x))
  return Math.max(...xs) - Math.min(...xs)
}

test('unless it is said otherwise pages are as printed, and the files for machines are hairlines without text', () => {
  expect(read({}, page).texts.length).toBeGreaterThan(5)
  expect(read({}, alone).texts).toEqual([])
  expect(read({}, alone).chains.map(c => c.width)).toEqual([0.0254, 0.0254, 0.0254])
  expect(read({}, page).chains.every(c => c.width !== 0.0254)).toBe(true)
})

test('text is on none of the files, or on all', () => {
  for (const name of [page, alone]) {
    expect(read({ text: false }, name).texts).toEqual([])
    expect(read({ text: true }, name).texts.length).toBeGreaterThan(5)
  }
})

test('lines are hairlines in all files, or as printed in all', () => {
  for (const name of [page, alone]) {
    const strokes = (svg: SvgChoices) => read(svg, name).chains.filter(c => c.paint === 'stroke')
    expect(strokes({ lines: 'hairline' }).every(c => c.width === 0.0254)).toBe(true)
    expect(strokes({ lines: 'printed' }).every(c => c.width > 0.1)).toBe(true)
  }
})

test('the kerf makes a part larger and its holes smaller in the file for a machine, and changes no page', () => {
  const widths = read({ kerf: 0.2 }, alone)
    .chains.map(widthOf)
    .sort((a, b) => a - b)
  const wanted = [7.8, 29.8, 120.2]
  expect(widths).toHaveLength(3)
  widths.forEach((width, i) => {
    expect(width).toBeCloseTo(wanted[i]!, 4)
  })
  const bytes = (svg: SvgChoices) => printed(svg).files.find(file => file.name === page)!.bytes
  expect(bytes({ kerf: 0.2 })).toEqual(bytes({}))
})

test('what is narrower than the kerf is said, and the rest is in the file', () => {
  const { findings, files, style } = printed({ kerf: 0.5 })
  expect(findings).toMatchObject([
    {
      rule: 'narrower-than-kerf',
      severity: 'warning',
      places: [{ part: 'heddle', feature: 'eye' }],
      limit: { value: 0.5 },
    },
  ])
  expect(sentence(findings[0]!, style)).toBe(
    'heddle.eye is too narrow in places for a kerf of 0.5 mm (≈ 1/64"): the machine cannot cut it as it is drawn',
  )
  expect(files.map(f => f.name)).toEqual([page, alone])
  expect(read({ kerf: 0.5 }, alone).chains).toHaveLength(2)
})

test.each([-0.1, Number.NaN])(
  'with a kerf of %d mm there are no files for machines, and an error says so',
  kerf => {
    const { findings, files, style } = printed({ kerf })
    expect(findings).toMatchObject([
      { rule: 'kerf-not-compensated', severity: 'error', places: [{ part: 'heddle' }] },
    ])
    expect(() => sentence(findings[0]!, style)).not.toThrow()
    expect(files.map(f => f.name)).toEqual([page])
  },
)
