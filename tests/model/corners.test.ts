import { expect, test } from 'vitest'
import { regionArea } from '../../src/geometry/measure/area.ts'
import { built, modelOf, onlyPart, planOf, written } from './model-of.ts'

const outlineOf = (corners: string) => onlyPart(modelOf(planOf(`    corners: ${corners}\n`)))

test('one radius rounds every corner', () => {
  const { drawn } = outlineOf('10')
  expect(drawn.outline.outer.segments.filter(s => s.kind === 'arc')).toHaveLength(4)
})

/** Rectangle 100 x 60 with r 10 corners: 5914.1593. Source: Green's theorem, by calculation. */
test('the rounded part has the area that calculation gives', () => {
  const part = onlyPart(modelOf(planOf('    corners: 10\n', '100 x 60 x 20')))
  expect(regionArea(part.drawn.outline)).toBeCloseTo(5914.1593, 4)
})

test.each([
  ['bottom-left', { x: 6, y: 6 }],
  ['bottom-right', { x: 94, y: 6 }],
  ['top-right', { x: 94, y: 34 }],
  ['top-left', { x: 6, y: 34 }],
])('the %s corner alone is rounded where its name says', (name, centre) => {
  const { drawn } = outlineOf(`{ ${name}: 6 }`)
  const arcs = drawn.outline.outer.segments.filter(s => s.kind === 'arc')
  expect(arcs).toMatchObject([{ tag: name, centre, radius: 6 }])
})

test('a chamfer starts so far from the corner along both edges', () => {
  const { drawn } = outlineOf('{ top-right: { chamfer: 7 } }')
  const cut = drawn.outline.outer.segments.find(s => s.tag === 'top-right')
  expect(cut).toMatchObject({ kind: 'line', from: { x: 100, y: 33 }, to: { x: 93, y: 40 } })
})

test('corners may use up an end, and no more', () => {
  expect(outlineOf('20').drawn.outline.outer.segments.filter(s => s.kind === 'line')).toHaveLength(2)
})

test('corners that need more than the edge has are a fault that says which edge and how much', () => {
  const text = planOf('    corners: { bottom-left: 25, top-left: { chamfer: 16 } }\n')
  const { model, findings } = built(text)
  expect(model).toBeUndefined()
  expect(findings).toMatchObject([
    {
      rule: 'corners-too-large',
      severity: 'error',
      facts: {
        edge: 'left',
        corners: { value: 41, unit: 'mm' },
        available: { value: 40, unit: 'mm' },
      },
      places: [{ part: 'plank' }, { part: 'plank' }],
    },
  ])
  expect(findings[0]!.places.map(p => written(text, p.source!))).toEqual(['25', '16'])
})

test('one radius for all that is too large is pointed at once', () => {
  const text = planOf('    corners: 21\n')
  const { findings } = built(text)
  expect(findings[0]!.places.map(p => written(text, p.source!))).toEqual(['21'])
})

test('a corner of which the drawing gives no radius stays square and is listed', () => {
  const part = outlineOf('{ top-left: unknown, top-right: { chamfer: unknown }, bottom-left: 5 }')
  expect(part.missing).toEqual([
    { kind: 'size', name: 'chamfer of the top-right corner' },
    { kind: 'size', name: 'radius of the top-left corner' },
  ])
  expect(part.drawn.outline.outer.segments.map(s => s.tag)).toEqual([
    'bottom',
    'right',
    'top',
    'left',
    'bottom-left',
  ])
})

test('the back is the outline seen from behind', () => {
  const { drawn } = outlineOf('{ top-left: 6 }')
  expect(drawn.faces.back.region.outer.segments.find(s => s.kind === 'arc')).toMatchObject({
    centre: { x: 94, y: 34 },
    radius: 6,
  })
})
