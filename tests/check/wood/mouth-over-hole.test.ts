import { expect, test } from 'vitest'
import { featuresMeet } from '../../../src/check/wood/features-meet.ts'
import { planWithCuts } from '../../model/model-of.ts'
import { only } from '../found.ts'

test('a leaning hole whose rim lies in a wide one, and whose mouth takes the rim of that one away', () => {
  const plan = planWithCuts([
    'hole: wide, at: { left: 40, bottom: 20 }, diameter: 9.5, depth: 10',
    'hole: askew, at: { left: 39.6, bottom: 20.1 }, diameter: 8.5, depth: 12, lean: { toward: top, angle: 15 }, countersink: 17',
  ])
  expect(only(featuresMeet, plan).severity).not.toBe('note')
})
