import { expect, test } from 'vitest'
import { scaledSize } from '../../../src/check/missing/scaled-size.ts'
import { planOf } from '../../model/model-of.ts'
import { found, only } from '../found.ts'

test('a size that was scaled off the drawing is listed until it is confirmed', () => {
  const text = planOf('    cuts: [{ hole: pin, at: { left: ~ 30, bottom: 20 }, diameter: 4 }]\n')
  const finding = only(scaledSize, text)
  expect(finding).toMatchObject({
    severity: 'warning',
    measured: { value: 30 },
    facts: { confirm: 'plank.pin' },
    places: [{ part: 'plank', feature: 'pin' }],
  })
  const { from, to } = finding.places[0]!.source!
  expect(text.slice(from, to)).toBe('~ 30')
  expect(found(scaledSize, `${text}confirmed: [plank.pin]\n`)).toEqual([])
})

test('what is calculated from a scaled size is not listed beside it', () => {
  const text = planOf(
    '    cuts: [{ hole: pin, at: { left: reach, bottom: reach / 2 }, diameter: 4 }]\n',
  ).replace('parts:', 'let: { reach: ~ 30 }\nparts:')
  expect(only(scaledSize, text).measured!.value).toBe(30)
})

test('a given size is not listed', () => {
  expect(found(scaledSize, planOf(''))).toEqual([])
})
