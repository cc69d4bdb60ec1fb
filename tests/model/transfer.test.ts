import { expect, test } from 'vitest'
import { built, modelOf, onlyPart, planOf } from './model-of.ts'

const ofPlan = (text: string, keys: string) => text.replace('units: mm\n', `units: mm\n${keys}`)

test('a part goes from paper to wood as it says itself, else as the plan says for all, else as suits it', () => {
  const own = planOf('    transfer: template\n')
  expect(onlyPart(modelOf(ofPlan(own, 'transfer: mark-out\n'))).transfer).toBe('template')
  expect(onlyPart(modelOf(ofPlan(planOf(''), 'transfer: mark-out\n'))).transfer).toBe('mark-out')
  expect(onlyPart(modelOf(planOf(''))).transfer).toBe('auto')
})

test('views stand in third angle unless the plan says first', () => {
  expect(modelOf(planOf('')).projection).toBe('third')
  expect(modelOf(ofPlan(planOf(''), 'projection: first\n')).projection).toBe('first')
})

test('how the faces are laid out is left open where the part does not say', () => {
  expect(onlyPart(modelOf(planOf('')))).not.toHaveProperty('wrap')
  expect(onlyPart(modelOf(planOf('    wrap: net\n'))).wrap).toBe('net')
})

test('a block that was measured has its true sizes beside the nominal ones', () => {
  const { length, measured } = onlyPart(modelOf(planOf('    measured: 99.6 x 40.2 x 19.5\n')))
  expect(length.mm).toBe(100)
  expect(measured).toMatchObject({ length: { mm: 99.6 }, width: { mm: 40.2 }, thickness: { mm: 19.5 } })
})

test('a measure that is not known is missing, and one of nothing is a fault', () => {
  const part = onlyPart(modelOf(planOf('    measured: 99.6 x unknown x 19.5\n')))
  expect(part).not.toHaveProperty('measured')
  expect(part.missing).toEqual([{ kind: 'size', name: 'measured width' }])
  const { findings } = built(planOf('    measured: 99.6 x 40 x 0\n'))
  expect(findings).toMatchObject([{ rule: 'size-not-positive', facts: { what: 'the measured thickness' } }])
})
