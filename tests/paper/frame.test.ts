import { expect, test } from 'vitest'
import type { Bounds } from '../../src/geometry/shape/contour.ts'
import { frameOf } from '../../src/paper/frame.ts'
import { lying, papers } from '../../src/paper/papers.ts'
import { defaultWorkshop } from '../../src/workshop/defaults.ts'

const sheets = [
  ...Object.values(papers).flatMap(paper => [paper, lying(paper)]),
  { name: 'small', width: 100, height: 100 },
]

test.each(sheets)('on $name ($width x $height) nothing reaches into the margins', paper => {
  const { body, head, foot, side } = frameOf(paper, defaultWorkshop)
  const { margin } = defaultWorkshop.printer
  for (const box of [body, head, foot, side]) {
    expect(box.left).toBeGreaterThanOrEqual(margin.left)
    expect(box.bottom).toBeGreaterThanOrEqual(margin.bottom)
    expect(box.right).toBeLessThanOrEqual(paper.width - margin.right)
    expect(box.top).toBeLessThanOrEqual(paper.height - margin.top)
    expect(box.right).toBeGreaterThan(box.left)
    expect(box.top).toBeGreaterThan(box.bottom)
  }
})

test.each(sheets)('on $name ($width x $height) the strips and the body do not overlap', paper => {
  const { body, head, foot, side } = frameOf(paper, defaultWorkshop)
  const boxes = [body, head, foot, side]
  const overlap = (a: Bounds, b: Bounds) =>
    a.left < b.right && b.left < a.right && a.bottom < b.top && b.bottom < a.top
  boxes.forEach((a, i) => {
    for (const b of boxes.slice(i + 1)) expect(overlap(a, b)).toBe(false)
  })
})

/** The edge a printer cannot reach: laser about 4.2 mm, inkjet 3 mm at the sides and up to 12.7 mm at the trailing edge. Common practice, no source. */
test('the margins are those that common printers cannot reach, and no less', () => {
  const { left, right, top, bottom } = defaultWorkshop.printer.margin
  for (const margin of [left, right, top]) expect(margin).toBeGreaterThanOrEqual(4.2)
  expect(bottom).toBeGreaterThanOrEqual(12.7)
})

test('the drawing has most of a letter page to itself', () => {
  const { body, paper } = frameOf(papers.letter, defaultWorkshop)
  const share = ((body.right - body.left) * (body.top - body.bottom)) / (paper.width * paper.height)
  expect(share).toBeGreaterThan(0.65)
})
