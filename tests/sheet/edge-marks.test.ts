import { expect, test } from 'vitest'
import type { Mark } from '../../src/drawing/mark.ts'
import { boundsOfRegions, contourBounds, joinBounds, noBounds } from '../../src/geometry/measure/bounds.ts'
import { planOf } from '../model/model-of.ts'
import { sheetsOf } from './sheets-of.ts'

function boxOf(marks: readonly Mark[], subject: string) {
  return marks
    .filter(m => m.subject === subject)
    .map(m =>
      m.kind === 'path'
        ? m.contours.map(contourBounds).reduce(joinBounds, noBounds)
        : m.kind === 'fill'
          ? boundsOfRegions(m.regions)
          : noBounds,
    )
    .reduce(joinBounds, noBounds)
}

const marksOf = (body: string) =>
  sheetsOf(planOf(`    make: 2\n    mirrored: true\n${body}`)).map(s => s.drawings[0].marks)

/** Common practice, no source: loop and V stand on the face edge. */
test.each([
  ['bottom', ''],
  ['top', '    face-edge: top\n'],
])('the face marks touch the %s edge when that is the face edge, on both hands', (edge, body) => {
  for (const marks of marksOf(body)) {
    const { bottom, top } = boxOf(marks, 'face-marks')
    if (edge === 'bottom') expect([bottom, top < 20]).toEqual([expect.closeTo(0, 9), true])
    else expect([top, bottom > 20]).toEqual([expect.closeTo(40, 9), true])
  }
})

test.each([
  ['left', '', ['left', 'right']],
  ['right', '    reference-end: right\n', ['right', 'left']],
])(
  'the reference end called %s lies at the other side on the mirrored piece',
  (_, body, [drawn, mirrored]) => {
    const [first, second] = marksOf(body).map(marks => boxOf(marks, 'reference-end'))
    const at = ({ left, right }: { left: number; right: number }) =>
      Math.abs(left) < 1e-9 ? 'left' : Math.abs(right - 100) < 1e-9 ? 'right' : 'nowhere'
    expect([at(first!), at(second!)]).toEqual([drawn, mirrored])
  },
)

test('face marks stand only where the edge is left after a notch', () => {
  const marks = marksOf(
    '    cuts:\n      - { notch: step, on: bottom, at: { left: 20 }, size: 60 x 10 }\n',
  )[0]!
  const { left, right, bottom } = boxOf(marks, 'face-marks')
  expect(right < 20 || left > 80).toBe(true)
  expect(bottom).toBeCloseTo(0, 9)
})

/** Common practice, no source. */
test.each([
  ['100 x 40 x 20', 'along'],
  ['40 x 100 x 20', 'across'],
])('on a part of %s the grain arrow runs %s', (size, direction) => {
  const { left, right, bottom, top } = boxOf(sheetsOf(planOf('', size))[0]!.drawings[0].marks, 'grain')
  expect(right - left > top - bottom).toBe(direction === 'along')
})
