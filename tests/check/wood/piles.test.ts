import { expect, test } from 'vitest'
import { check } from '../../../src/check/registry.ts'
import { subjectOf } from '../../../src/check/subject/subject.ts'
import { featuresMeet } from '../../../src/check/wood/features-meet.ts'
import { defaultWorkshop } from '../../../src/workshop/defaults.ts'
import { modelOf, planWithCuts } from '../../model/model-of.ts'
import { found, only } from '../found.ts'

const many = (count: number, cut: (i: number) => string) => Array.from({ length: count }, (_, i) => cut(i))
const names = (count: number) => many(count, i => `h${i}`)

test('two hundred holes on one spot are one finding, which says how many and begins to say which', () => {
  const plan = planWithCuts(many(200, i => `hole: h${i}, at: center, diameter: 6`))
  const [finding, ...others] = check(modelOf(plan), defaultWorkshop)
  expect(others).toEqual([])
  expect(finding).toMatchObject({
    rule: 'features-meet',
    severity: 'warning',
    facts: {
      how: 'lies within',
      count: { value: 200, unit: 'count' },
      names: `${names(12).join(', ')}, and 188 more`,
    },
  })
})

test.each([
  ['slots', (i: number) => `slot: h${i}, at: center, size: 20 x 6, ends: round`],
  ['leaning holes', (i: number) => `hole: h${i}, at: center, diameter: 6, lean: { toward: left, angle: 10 }`],
  ['counterbored holes', (i: number) => `hole: h${i}, at: center, diameter: 6, counterbore: 12 x 4`],
  ['holes in an edge', (i: number) => `hole: h${i}, on: top, at: center, diameter: 6, depth: 10`],
  ['holes from behind', (i: number) => `hole: h${i}, on: back, at: center, diameter: 6, depth: 10`],
  ['chamfers', (i: number) => `chamfer: h${i}, on: front, edges: all, size: 1`],
])('%s that were copied and left where they were are one finding too', (_, cut) => {
  const finding = only(featuresMeet, planWithCuts(many(5, cut)))
  expect(finding.facts).toMatchObject({ count: { value: 5 }, names: names(5).join(', ') })
})

test('a row whose spacing was written in the wrong unit is said once, of the two that are worst', () => {
  const row = 'row: r, at: { left: 20, bottom: 20 }, toward: right, spacing: 0.25, count: 60, diameter: 6'
  const finding = only(featuresMeet, planWithCuts([row]))
  expect(finding).toMatchObject({ severity: 'error', facts: { count: { value: 60 }, names: 'r' } })
  // neighbours: 6 − 0.25
  expect(finding.measured!.value).toBeCloseTo(5.75, 9)
})

test('a row whose neighbours overlap is said once, and so is one that lies in a slot', () => {
  const row = (spacing: number) =>
    `row: r, at: { left: 20, bottom: 20 }, toward: right, spacing: ${spacing}, count: 7, diameter: 6`
  expect(only(featuresMeet, planWithCuts([row(5)])).facts).toMatchObject({ count: { value: 7 }, names: 'r' })
  const slot = 'slot: s, at: { left: 10, bottom: 22 }, size: 80 x 8'
  const finding = only(featuresMeet, planWithCuts([row(10), slot]))
  expect(finding.facts).toMatchObject({ what: 'hole', other: 'slot', count: { value: 8 } })
})

test('three holes in a chain, or in a triangle, are said pair by pair: then it is clear what lies to what', () => {
  const at = (i: number, left: number, bottom: number) =>
    `hole: h${i}, at: { left: ${left}, bottom: ${bottom} }, diameter: 6`
  const pairs = (cuts: readonly string[]) =>
    found(featuresMeet, planWithCuts(cuts)).map(({ places, facts }) => [
      places.map(({ feature }) => feature).join(' '),
      facts.count.value,
    ])
  expect(pairs([at(0, 30, 20), at(1, 35, 20), at(2, 40, 20)])).toEqual([
    ['h0 h1', 2],
    ['h1 h2', 2],
  ])
  expect(pairs([at(0, 30, 20), at(1, 34, 20), at(2, 32, 23)])).toEqual([
    ['h0 h1', 2],
    ['h0 h2', 2],
    ['h1 h2', 2],
  ])
})

test('six holes of six sizes that all run into one another are one finding', () => {
  const plan = planWithCuts(
    many(6, i => `hole: h${i}, at: { left: ${30 + i}, bottom: 20 }, diameter: ${10 + i / 2}`),
  )
  expect(only(featuresMeet, plan).facts).toMatchObject({ count: { value: 6 }, names: names(6).join(', ') })
})

test('what stands in a pile meets what stands beside it but once', () => {
  const cuts = [
    ...many(50, i => `hole: h${i}, at: { left: 30, bottom: 20 }, diameter: 6`),
    ...many(50, i => `hole: g${i}, at: { left: 38, bottom: 20 }, diameter: 6`),
    ...many(50, i => `hole: t${i}, on: top, at: { left: 30, front: 10 }, diameter: 6, depth: 25`),
  ]
  const byRule = check(modelOf(planWithCuts(cuts)), defaultWorkshop).map(({ rule }) => rule)
  expect(byRule.toSorted()).toEqual([
    'features-meet',
    'features-meet',
    'features-meet',
    'holes-meet-inside',
    'wall-too-thin',
  ])
})

test('the pairs that are asked grow with the holes, not with their square', () => {
  const distinct = (count: number) => {
    const spacing = 40 / count
    const row = `row: r, at: { left: 30, bottom: 20 }, toward: right, spacing: ${spacing}, count: ${count}, diameter: 6`
    return subjectOf(modelOf(planWithCuts([row])), defaultWorkshop).parts[0]!.planes[0]!.piled.distinct.length
  }
  // 40 mm in cells of a quarter of the radius
  expect(distinct(1000)).toBeLessThanOrEqual(40 / 0.75 + 2)
  expect(distinct(500)).toBe(distinct(1000))
})
