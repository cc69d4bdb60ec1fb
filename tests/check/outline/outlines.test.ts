import { expect, test } from 'vitest'
import { outlineCrossing } from '../../../src/check/outline/outline-crossing.ts'
import { outlineDoubled } from '../../../src/check/outline/outline-doubled.ts'
import { outlineNoLength } from '../../../src/check/outline/outline-no-length.ts'
import { outlineOpen } from '../../../src/check/outline/outline-open.ts'
import { sizeDiffers } from '../../../src/check/outline/size-differs.ts'
import { taperDisagrees } from '../../../src/check/outline/taper-disagrees.ts'
import { found, only } from '../found.ts'

const plan = (part: string) =>
  `paperjig: 1\ntitle: Loom\nunits: mm\nparts:\n  cam: { thickness: 10, ${part} }\n`
const steps = (...points: readonly string[]) => points.map(point => `{ to: [${point}] }`).join(', ')
const sound = plan(`outline: [${steps('0, 0', '80, 0', '80, 40', '0, 40')}]`)

test('an outline that crosses itself is found with the place', () => {
  const finding = only(outlineCrossing, plan(`outline: [${steps('0, 0', '80, 40', '80, 0', '0, 40')}]`))
  expect(finding).toMatchObject({ severity: 'error', places: [{ part: 'cam' }], facts: { what: 'part' } })
  expect(finding.facts.left!.value).toBeCloseTo(40, 6)
  expect(finding.facts.bottom!.value).toBeCloseTo(20, 6)
})

test('an outline that runs back over itself is found', () => {
  const finding = only(
    outlineDoubled,
    plan(`outline: [${steps('0, 0', '80, 0', '80, 40', '80, 10', '0, 40')}]`),
  )
  expect(finding).toMatchObject({ severity: 'error', places: [{ part: 'cam' }] })
})

test('a step that leads nowhere is found', () => {
  const finding = only(
    outlineNoLength,
    plan(`outline: [${steps('0, 0', '80, 0', '80, 0', '80, 40', '0, 40')}]`),
  )
  expect(finding).toMatchObject({ severity: 'error', places: [{ part: 'cam' }] })
})

test('half an outline that does not end on its axis is found, and by how much', () => {
  const half = steps('40, 0', '80, 0', '80, 40', '43, 40')
  const finding = only(outlineOpen, plan(`outline: [${half}], symmetric: left-right`))
  expect(finding).toMatchObject({ severity: 'error', places: [{ part: 'cam' }] })
  expect(finding.measured!.value).toBeCloseTo(3, 9)
})

test('a cut-out has an outline, too', () => {
  const cut = `{ cut-out: eye, at: center, outline: [${steps('0, 0', '20, 10', '20, 0', '0, 10')}] }`
  const finding = only(outlineCrossing, plan(`size: 80 x 40, cuts: [${cut}]`))
  expect(finding).toMatchObject({ facts: { what: 'cut-out' }, places: [{ part: 'cam', feature: 'eye' }] })
})

test('a size beside an outline that comes to another one is found', () => {
  const outline = `outline: [${steps('0, 0', '78, 0', '78, 40', '0, 40')}]`
  const finding = only(sizeDiffers, plan(`size: 80 x 40, ${outline}`))
  expect(finding).toMatchObject({
    severity: 'error',
    measured: { value: 78 },
    limit: { value: 80 },
    facts: { direction: 'length' },
  })
})

/** Far end = near end + length·tan(angle): from 40 to 20 over 80 the angle is atan(1/4) = 14.0362°. */
test('two ends and an angle that disagree are found', () => {
  const finding = only(taperDisagrees, plan('size: 80, taper: { left: 40, right: 20, angle: 12 }'))
  expect(finding.facts.drawnAngle.value).toBeCloseTo(14.0362, 4)
  expect(finding.facts.statedAngle.value).toBeCloseTo(12, 9)
  expect(finding.facts.widthByAngle.value).toBeCloseTo(40 - 80 * Math.tan((12 * Math.PI) / 180), 9)
})

test('nothing is found of a sound outline, size and taper', () => {
  for (const rule of [outlineCrossing, outlineDoubled, outlineNoLength, outlineOpen]) {
    expect(
      found<'outline-open' | 'outline-crossing' | 'outline-doubled' | 'outline-no-length'>(
        rule as never,
        sound,
      ),
    ).toEqual([])
  }
  const outline = `outline: [${steps('0, 0', '80, 0', '80, 40', '0, 40')}]`
  expect(found(sizeDiffers, plan(`size: 80 x 40, ${outline}`))).toEqual([])
  expect(found(taperDisagrees, plan(`size: 80, taper: { left: 40, right: 20, angle: 14.036243 }`))).toEqual(
    [],
  )
})
