import fc from 'fast-check'
import { expect, test } from 'vitest'
import { locate } from '../../src/finding/locate.ts'
import { sentence } from '../../src/finding/sentence.ts'
import type { Unit } from '../../src/length/unit.ts'
import { coincident } from '../../src/number/tolerance.ts'
import { defaultWorkshop } from '../../src/workshop/defaults.ts'
import { readWorkshop } from '../../src/workshop/read-workshop.ts'
import { union } from '../../src/workshop/size-set.ts'
import type { Workshop } from '../../src/workshop/workshop.ts'
import { writeWorkshop } from '../../src/workshop/write-workshop.ts'

const inch = 25.4
const head = 'paperjig-workshop: 1\nunits: inch\n'

function workshopOf(text: string): Workshop {
  const { workshop, findings } = readWorkshop(text, 'shop.yaml')
  expect(findings).toEqual([])
  return workshop!
}

/** Two workshops whose figures differ by less than can be told apart. */
function expectSame(a: unknown, b: unknown): void {
  if (typeof a === 'number' && typeof b === 'number') {
    expect(Math.abs(a - b)).toBeLessThanOrEqual(coincident)
  } else if (typeof a === 'object' && a !== null && typeof b === 'object' && b !== null) {
    expect(Object.keys(b)).toEqual(Object.keys(a))
    for (const [key, value] of Object.entries(a)) expectSame(value, b[key as keyof typeof b])
  } else expect(b).toBe(a)
}

test.each<Unit>(['inch', 'mm'])(
  'the default workshop, written in %s, reads back to the same figures',
  unit => {
    expectSame(defaultWorkshop, workshopOf(writeWorkshop(defaultWorkshop, unit)))
  },
)

/** A workshop with every length, time and list replaced at random within what may stand there. */
const anyWorkshop: fc.Arbitrary<Workshop> = fc
  .record({
    small: fc.double({ min: 0, max: inch, noNaN: true }),
    sixtyFourths: fc.nat(64),
    inchBits: fc.array(fc.integer({ min: 1, max: 128 }), { maxLength: 30 }),
    mmBits: fc.array(fc.integer({ min: 1, max: 300 }), { maxLength: 30 }),
    minutes: fc.nat(3000),
    degrees: fc.integer({ min: 60, max: 180 }),
    share: fc.integer({ min: 0, max: 1000 }),
    point: fc.constantFrom('twist' as const, 'brad' as const, 'flat' as const),
  })
  .map(({ small, sixtyFourths, inchBits, mmBits, minutes, degrees, share, point }) => ({
    ...defaultWorkshop,
    bits: {
      inch: union(inchBits.map(n => (n * inch) / 64)),
      mm: union(mmBits.map(n => n / 10)),
      point,
      pointAngle: (degrees * Math.PI) / 180,
      spur: (sixtyFourths * inch) / 64,
    },
    wall: small,
    kerf: { circular: small, band: (sixtyFourths * inch) / 64 },
    clear: { ...defaultWorkshop.clear, breaksBelow: share / 1000, least: small },
    glue: { ...defaultWorkshop.glue, full: minutes },
  }))

test('any workshop, written in either unit, reads back to the same figures', () => {
  fc.assert(
    fc.property(anyWorkshop, fc.constantFrom<Unit>('inch', 'mm'), (workshop, unit) => {
      expectSame(workshop, workshopOf(writeWorkshop(workshop, unit)))
    }),
  )
})

test('an empty file, and one with nothing but the head, is the default workshop', () => {
  for (const text of ['', '# nothing yet\n', head]) expect(workshopOf(text)).toEqual(defaultWorkshop)
})

test('what the file does not say stays as it is', () => {
  const { fits, ...rest } = workshopOf(`${head}fits: { turning: { large: 1 mm }, easy: 0.5 mm }\n`)
  const { fits: before, ...others } = defaultWorkshop
  expect(rest).toEqual(others)
  expect(fits).toEqual({ ...before, turning: { ...before.turning, large: 1 }, easy: 0.5 })
})

test('bits stand as sizes, ranges and names of drills, each list in its own unit, sorted, each size once', () => {
  const { bits } = workshopOf(
    `${head}bits: { inch: ["#43", letter F, 1/4, 1/16 to 3/16 by 1/16, 1/8], mm: [10, 3 to 6] }\n`.replace(
      '3 to 6',
      '3 to 5 by 1',
    ),
  )
  // #43 and F: ASME B94.11M as reprinted in a public code table
  const inches = [1 / 16, 0.089, 1 / 8, 3 / 16, 1 / 4, 0.257]
  bits.inch.forEach((size, i) => {
    expect(size).toBeCloseTo(inches[i]! * inch, 9)
  })
  expect(bits.inch).toHaveLength(inches.length)
  expect(bits.mm).toEqual([3, 4, 5, 10])
})

const found = (text: string) => {
  const read = readWorkshop(text, 'shop.yaml')
  expect(read.workshop === undefined).toBe(read.findings.some(f => f.severity === 'error'))
  return read.findings.map(finding => {
    const { line, column } = locate(read.text, finding.places[0]!.source!.from)
    return [line, column, finding.rule, sentence(finding, { unit: 'inch', precision: inch / 64 })]
  })
}

test.each<[what: string, text: string, wanted: readonly [number, number, string, RegExp]]>([
  ['a plan in its place', 'paperjig: 1\n', [1, 1, 'missing-key', /a workshop needs "paperjig-workshop": 1/]],
  ['no unit', 'paperjig-workshop: 1\n', [1, 1, 'missing-key', /needs "units": one of inch, mm/]],
  ['another version', head.replace('1', '9'), [1, 20, 'wrong-version', /of version "9"/]],
  ['a list', '- bits\n', [1, 1, 'wrong-kind', /a list stands here/]],
  ['a wrong key', `${head}kerfs: 1/8\n`, [3, 1, 'unknown-key', /did you mean "kerf"\?/]],
  [
    'a wrong key inside',
    `${head}fits: { turnin: 1/64 }\n`,
    [3, 9, 'unknown-key', /"turnin" is no key of the fits; did you mean "turning"\?/],
  ],
  [
    'a kerf of a foot',
    `${head}kerf: { circular: 12 }\n`,
    [3, 19, 'setting-out-of-range', /the kerf comes to 12" .* 0" .* to 1"/],
  ],
  ['a negative fit', `${head}fits: { easy: -1/64 }\n`, [3, 15, 'setting-out-of-range', /the clearance/]],
  ['a name', `${head}wall: board\n`, [3, 7, 'not-a-size', /"board"/]],
  ['unknown', `${head}wall: unknown\n`, [3, 7, 'not-a-size', /the shop that the program assumes/]],
  ['a time without unit', `${head}glue: { open: 5 }\n`, [3, 15, 'not-a-time', /"5" is no time/]],
  ['a wrong point', `${head}bits: { point: bard }\n`, [3, 16, 'not-a-choice', /did you mean "brad"\?/]],
  ['a steep point', `${head}bits: { point-angle: 12 }\n`, [3, 22, 'not-a-size', /60 to 180 degrees/]],
  ['a range backward', `${head}bits: { mm: [5 to 3 by 1] }\n`, [3, 14, 'steps-backward', /smallest first/]],
  ['a range without end', `${head}bits: { mm: [1 to 100 by 0.001] }\n`, [3, 14, 'limit-passed', /1,000/]],
  [
    'a fault inside a range',
    `${head}bits: { inch: [1/32 to 1/2 by 1/0] }\n`,
    [3, 31, 'not-a-size', /"1\/0"/],
  ],
  ['a share beyond one', `${head}clear: { breaks-below: 2 }\n`, [3, 24, 'not-a-count', /from 0 to 1/]],
  ['YAML run together', `${head}wall:1/16\n`, [3, 1, 'colon-without-space', /write "wall: 1\/16"/]],
  ['a tag', `${head}wall: !!float 3\n`, [3, 15, 'tag-refused', /tags are not read/]],
])('%s is said with its place', (_, text, [line, column, rule, says]) => {
  const [first, ...others] = found(text)
  expect(others).toEqual([])
  expect(first!.slice(0, 3)).toEqual([line, column, rule])
  expect(first![3]).toMatch(says)
})

test('several faults are found in one run, in the order of the file', () => {
  const rules = found(`${head}wall: -1\nneck: { across: x }\nglue: { full: soon }\n`).map(
    ([, , rule]) => rule,
  )
  expect(rules).toEqual(['setting-out-of-range', 'not-a-size', 'not-a-time'])
})

test('any text gives a workshop or positioned findings', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary' }), text => {
      const { workshop, findings } = readWorkshop(`${head}${text}`, 'shop.yaml')
      expect(workshop !== undefined || findings.length > 0).toBe(true)
      for (const { places } of findings) expect(places[0]?.source).toBeDefined()
    }),
  )
})
