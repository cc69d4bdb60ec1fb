import fc from 'fast-check'
import { expect, test } from 'vitest'
import { pointAt } from '../../src/geometry/measure/along.ts'
import { pointInRegion } from '../../src/geometry/measure/inside.ts'
import { nearestOnContour, nearestOnRegion } from '../../src/geometry/measure/nearest.ts'
import { finishedOutline } from '../../src/model/finished-outline.ts'
import { coincident } from '../../src/number/tolerance.ts'
import { roughCutMarks } from '../../src/sheet/template/rough-cut.ts'
import { defaultWorkshop } from '../../src/workshop/defaults.ts'
import { modelOf, onlyPart, planOf } from '../model/model-of.ts'
import { randomPlan } from './random-plan.ts'
import { segmentsOf, sheetsOf } from './sheets-of.ts'

const shares = [0, 0.1, 0.25, 0.5, 0.75, 0.9, 1]

function roughCut(text: string) {
  const part = onlyPart(modelOf(text))
  const outline = finishedOutline(part.drawn)
  return { part, outline, marks: roughCutMarks(outline, part, defaultWorkshop) }
}

/** Common practice, no source: 1/32 in on parts under 3 in, 1/16 in above. */
test.each([
  ['75 x 40 x 20', 25.4 / 32],
  ['40 x 75 x 20', 25.4 / 32],
  ['76.2 x 40 x 20', 25.4 / 16],
  ['300 x 40 x 20', 25.4 / 16],
])('round a part of %s the rough-cut line stands %d mm outside, everywhere', (size, allowance) => {
  const { outline, marks } = roughCut(
    planOf('    corners: { top-left: 5, top-right: { chamfer: 6 } }\n', size),
  )
  for (const segment of segmentsOf(marks)) {
    for (const share of shares) {
      const p = pointAt(segment, share)
      expect(nearestOnRegion(outline[0]!, p)!.distance).toBeCloseTo(allowance, 6)
      expect(pointInRegion(outline[0]!, p)).toBe('outside')
    }
  }
})

test('round any part the rough-cut line is nowhere nearer than its allowance, and nowhere farther', () => {
  fc.assert(
    fc.property(randomPlan, text => {
      const { part, outline, marks } = roughCut(text)
      const allowance = Math.max(part.length.mm, part.width.mm) < 76.2 ? 25.4 / 32 : 25.4 / 16
      expect(marks).toHaveLength(1)
      for (const segment of segmentsOf(marks)) {
        for (const share of shares) {
          const p = pointAt(segment, share)
          const distance = Math.min(...outline.map(region => nearestOnRegion(region, p)!.distance))
          expect(Math.abs(distance - allowance)).toBeLessThan(2 * coincident)
        }
      }
    }),
    { numRuns: 100 },
  )
})

test('the outer edge of a part has the rough-cut line beside it all the way round', () => {
  const { outline, marks } = roughCut(planOf('    corners: 5\n'))
  const [mark] = marks
  if (mark?.kind !== 'path') throw new Error('no line')
  for (const segment of outline[0]!.outer.segments) {
    for (const share of shares) {
      const nearest = Math.min(
        ...mark.contours.map(c => nearestOnContour(c, pointAt(segment, share))!.distance),
      )
      expect(nearest).toBeCloseTo(25.4 / 16, 6)
    }
  }
})

test('a template has its rough-cut line once', () => {
  const { marks } = sheetsOf(planOf(''))[0]!.drawings[0]
  expect(marks.filter(m => m.kind === 'path' && m.role === 'rough-cut')).toHaveLength(1)
})
