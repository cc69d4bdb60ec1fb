import { expect, test } from 'vitest'
import { built, modelOf, onlyPart, planOf, planWithCuts } from '../model-of.ts'

const mm = (value: number) => ({ value: expect.closeTo(value, 4), unit: 'mm' })
const degree = (value: number) => ({ value: expect.closeTo(value, 4), unit: 'degree' })

const lean = (angle: number) => ({
  what: 'the lean',
  angle: degree(angle),
  above: degree(0),
  below: degree(60),
})

/** The part is 100 x 40 x 20 mm. What stands between the two ^ is at fault. */
test.each([
  ['lean: { toward: right, angle: ^70^ }', 'angle-out-of-range', lean(70)],
  ['lean: { toward: right, angle: ^60^ }', 'angle-out-of-range', lean(60)],
  ['lean: { toward: right, angle: ^0^ }', 'angle-out-of-range', lean(0)],
  ['lean: { toward: right, angle: ^-8^ }', 'angle-out-of-range', lean(-8)],
  [
    'lean: [{ toward: right, angle: 5 }, { toward: top, angle: ^80^ }]',
    'angle-out-of-range',
    { what: 'the lean toward top', angle: degree(80) },
  ],
  [
    'lean: [{ toward: right, angle: 55 }, ^{ toward: top, angle: 55 }^]',
    'angle-out-of-range',
    // Source: atan(√2 · tan 55°)
    { what: 'the resultant of the two leans', angle: degree(63.659) },
  ],
  [
    'countersink: { diameter: 8, angle: ^170^ }',
    'angle-out-of-range',
    { what: 'the angle of the countersink' },
  ],
  ['countersink: { diameter: 8, angle: ^0^ }', 'angle-out-of-range', { angle: degree(0) }],
  [
    'bit: { point: twist, angle: ^180^ }',
    'angle-out-of-range',
    { what: 'the angle of the bit', angle: degree(180) },
  ],
  ['bit: { point: twist, angle: ^10^ }', 'angle-out-of-range', { what: 'the angle of the bit' }],
  ['countersink: ^3^', 'mouth-too-narrow', { what: 'countersink', mouth: mm(3), hole: mm(4) }],
  ['counterbore: ^4 x 2^', 'mouth-too-narrow', { what: 'counterbore', mouth: mm(4), hole: mm(4) }],
  [
    'counterbore: ^8 x 20^',
    'mouth-too-deep',
    { what: 'counterbore', depth: mm(20), available: mm(20), of: 'part' },
  ],
  ['depth: 6, counterbore: ^8 x 6^', 'mouth-too-deep', { depth: mm(6), available: mm(6), of: 'hole' }],
  [
    'depth: 2, countersink: ^{ diameter: 8, angle: 90 }^',
    'mouth-too-deep',
    { depth: mm(2), available: mm(2) },
  ],
  ['on: top, counterbore: ^8 x 41^', 'mouth-too-deep', { available: mm(40), of: 'part' }],
  // Source: a radius of 5 leaning 45° reaches 5·tan 45° down from its middle
  [
    'counterbore: ^10 x 4^, lean: { toward: right, angle: 45 }',
    'mouth-too-shallow',
    { depth: mm(4), least: mm(5) },
  ],
  [
    'countersink: ^{ diameter: 8, angle: 90 }^, lean: { toward: right, angle: 36 }',
    'angle-out-of-range',
    { what: 'half the countersink together with the lean', angle: degree(81), below: degree(80) },
  ],
  ['countersink: ^0^', 'size-not-positive', { what: 'the diameter of the countersink' }],
  ['counterbore: 8 x ^-1^', 'size-not-positive', { what: 'the depth of the counterbore' }],
  ['counterbore: 8 x ^depht^', 'size-formula', { found: 'depht' }],
])('%s stops the model, and the finding stands at what is at fault', (keys, rule, facts) => {
  const [before = '', fault = ''] = keys.split('^')
  const on = keys.includes('on: top') ? 'at: { left: 20, front: 10 }' : 'at: { left: 20, bottom: 10 }'
  const text = planWithCuts([`hole: peg, ${on}, diameter: 4, ${keys.replaceAll('^', '')}`])
  const { model, findings } = built(text)
  expect(model).toBeUndefined()
  expect(findings).toMatchObject([
    { rule, severity: 'error', places: [{ part: 'plank', feature: 'peg' }], facts },
  ])
  const { from } = findings[0]!.places[0]!.source!
  expect(text.slice(from)).toMatch(fault)
  expect(from).toBe(text.indexOf('diameter: 4, ') + 'diameter: 4, '.length + before.length)
})

test('a leaning hole has more room for a counterbore than the part is thick', () => {
  const at = 'hole: peg, at: { left: 50, bottom: 20 }, diameter: 4, lean: { toward: right, angle: 45 }'
  expect(built(planWithCuts([`${at}, counterbore: 6 x 28`])).findings).toEqual([])
  expect(built(planWithCuts([`${at}, counterbore: 6 x 28.3`])).findings).toMatchObject([
    { rule: 'mouth-too-deep', facts: { available: mm(20 * Math.SQRT2) } },
  ])
})

test('a fault that several faces share is reported once', () => {
  const cut = 'hole: peg, on: [front, back], at: center, diameter: 4, counterbore: 8 x 30'
  expect(built(planWithCuts([cut])).findings).toHaveLength(1)
})

test.each([
  ['lean: { toward: right, angle: unknown }', ['angle of the lean']],
  ['lean: [{ toward: right, angle: 5 }, { toward: top, angle: unknown }]', ['angle of the lean']],
  ['counterbore: unknown x 3', ['diameter of the counterbore']],
  [
    'counterbore: { diameter: unknown, depth: unknown }',
    ['diameter of the counterbore', 'depth of the counterbore'],
  ],
  ['countersink: unknown', ['diameter of the countersink']],
  ['countersink: { diameter: 8, angle: unknown }', ['angle of the countersink']],
  ['bit: { point: twist, angle: unknown }', ['angle of the bit']],
  ['depth: unknown, countersink: unknown', ['depth', 'diameter of the countersink']],
])('what the drawing does not give of { %s } leaves the hole unplaced and stops nothing', (keys, names) => {
  const part = onlyPart(modelOf(planWithCuts([`hole: peg, at: center, diameter: 4, ${keys}`])))
  const missing = names.map(name => ({ kind: 'size', name }))
  expect(part.drawn.features).toMatchObject([{ shape: { kind: 'unplaced', what: 'hole', missing } }])
})

test('angles may be formulas of named ones', () => {
  const text = planOf(
    '    cuts:\n      - { hole: peg, at: center, diameter: 4, lean: { toward: right, angle: rake / 2 } }\n',
  )
  const named = text.replace('parts:', 'let: { rake: 16 deg }\nparts:')
  const [feature] = onlyPart(modelOf(named)).drawn.features
  expect(feature?.shape).toMatchObject({ lean: { angle: (8 * Math.PI) / 180 } })
})
