import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { regionArea } from '../../src/geometry/measure/area.ts'
import { regionBounds } from '../../src/geometry/measure/bounds.ts'
import { segmentLength } from '../../src/geometry/measure/length.ts'
import type { Arc } from '../../src/geometry/shape/segment.ts'
import { sweep } from '../../src/geometry/shape/segment.ts'
import type { Part } from '../../src/model/part.ts'
import { built, modelOf, onlyPart } from './model-of.ts'

/** A plan in millimetres with one part of the outline given, 10 thick. */
export function outlinePlan(steps: readonly string[], more: readonly string[] = []): string {
  const lines = ['thickness: 10', ...more, 'outline:', ...steps.map(step => `  - { ${step} }`)]
  return `paperjig: 1\ntitle: Pier\nunits: mm\nparts:\n  jib:\n${lines.map(line => `    ${line}\n`).join('')}`
}

const outlined = (steps: readonly string[], more: readonly string[] = []) =>
  onlyPart(modelOf(outlinePlan(steps, more)))
const areaOf = (part: Part) => regionArea(part.drawn.outline)
const arcsOf = (part: Part) => part.drawn.outline.outer.segments.filter((s): s is Arc => s.kind === 'arc')

describe('an outline from corner to corner', () => {
  const wedge = ['to: [0, 0]', 'to: [60, 0], name: foot', 'to: [60, 20]', 'to: [0, 40]']

  test('bounds what its corners say, and closes back to the first', () => {
    const part = outlined(wedge)
    expect(areaOf(part)).toBeCloseTo(60 * 30, 9)
    expect([part.length.mm, part.width.mm]).toEqual([60, 40])
    expect(part.drawn.outline.outer.segments.map(s => s.tag)).toEqual([
      'foot',
      undefined,
      undefined,
      undefined,
    ])
  })

  test('is the same the other way round, and wherever its origin is', () => {
    const moved = outlined(['to: [5, -7]', 'to: [65, -7]', 'to: [65, 13]', 'to: [5, 33]'])
    expect(regionBounds(moved.drawn.outline)).toEqual({ left: 0, bottom: 0, right: 60, top: 40 })
    const back = outlined([wedge[0]!, wedge[3]!, wedge[2]!, 'to: [60, 0]'])
    expect(areaOf(back)).toBeCloseTo(1800, 9)
  })

  test('may close itself with an edge of its own', () => {
    const part = outlined([...wedge, 'to: [0, 0], name: hind'])
    expect(part.drawn.outline.outer.segments.map(s => s.tag)).toEqual(['foot', undefined, undefined, 'hind'])
  })

  test('names the edge that closes it by its first step', () => {
    const part = outlined(['to: [0, 0], name: hind', ...wedge.slice(1)])
    expect(part.drawn.outline.outer.segments.at(-1)?.tag).toBe('hind')
  })

  test('measures its points from any side where the part has a size', () => {
    const part = outlined(
      ['to: [0, 0]', 'to: { right: 0, bottom: 0 }', 'to: { right: 0, top: 20 }', 'to: { left: 0, top: 0 }'],
      ['size: 60 x 40'],
    )
    expect(areaOf(part)).toBeCloseTo(1800, 9)
    const { findings } = built(outlinePlan(['to: [0, 0]', 'to: { right: 0, bottom: 0 }', 'to: [0, 9]']))
    expect(findings).toMatchObject([{ rule: 'outline-needs-size', facts: { side: 'right' } }])
  })

  test('that does not fill the size beside it says by how much it differs', () => {
    const part = outlined(wedge, ['size: 60 x 45'])
    expect(part.sizeDiffers).toMatchObject([{ direction: 'width', stated: { mm: 45 }, drawn: 40 }])
    expect(outlined(wedge, ['size: 60 x 40']).sizeDiffers).toEqual([])
  })
})

describe('an arc of an outline', () => {
  // chord 100 and height 10 give r = (100²/4 + 10²)/(2·10) = 130: from the definition, by calculation
  const bent = 2 * Math.asin(50 / 130)
  const segment = (130 * 130 * (bent - Math.sin(bent))) / 2
  test.each([
    ['by its radius', 'arc: [0, 0], radius: 130, turn: left'],
    ['through a point', 'arc: [0, 0], through: [50, 10]'],
    ['by its bend', `arc: [0, 0], bend: ${(bent * 180) / Math.PI}`],
  ])('%s is the one that the sagitta gives', (_, step) => {
    const part = outlined(['to: [0, 0]', 'to: [100, 0]', step])
    const [arc] = arcsOf(part)
    expect(arc?.radius).toBeCloseTo(130, 9)
    expect(part.width.mm).toBeCloseTo(10, 9)
    expect(areaOf(part)).toBeCloseTo(segment, 6)
  })

  test('has the published radius, angle and area of a circle segment', () => {
    // Source: Matheass help page on circle segments: chord 21, height 6 give r 12.1875, 118.97953°, area 89.254148
    const part = outlined(['to: [0, 0]', 'to: [21, 0]', 'arc: [0, 0], through: [10.5, 6]'])
    const [arc] = arcsOf(part)
    expect(arc?.radius).toBeCloseTo(12.1875, 9)
    expect((sweep(arc!) * 180) / Math.PI).toBeCloseTo(118.97953, 5)
    expect(areaOf(part)).toBeCloseTo(89.254148, 6)
  })

  test('by its radius is the lesser one, to the left or to the right', () => {
    const left = outlined([
      'to: [0, 0]',
      'to: [60, 0]',
      'to: [60, 40]',
      'arc: [0, 40], radius: 50, turn: left',
    ])
    const right = outlined([
      'to: [0, 0]',
      'to: [60, 0]',
      'to: [60, 40]',
      'arc: [0, 40], radius: 50, turn: right',
    ])
    expect(areaOf(left) + areaOf(right)).toBeCloseTo(2 * 60 * 40, 6)
    expect(left.width.mm).toBeCloseTo(40 + 50 - 40, 9)
    expect(right.width.mm).toBe(40)
  })

  test('that is tangent goes on in the direction of what came before, through a chain of them', () => {
    const part = outlined([
      'to: [0, 0]',
      'to: [10, 0]',
      'to: [10, 10]',
      'arc: [30, 30], tangent: true',
      'arc: [50, 50], tangent: true',
      'to: [50, 60]',
      'to: [0, 60]',
    ])
    const [first, second] = arcsOf(part)
    expect([first?.radius, second?.radius]).toEqual([expect.closeTo(20, 9), expect.closeTo(20, 9)])
    expect(first?.turn).not.toBe(second?.turn)
    // what the first quarter adds the second takes away again
    expect(areaOf(part)).toBeCloseTo(10 * 60 + 40 * 30 - 0, 0)
  })

  test('that has no bend, or goes straight on, is a straight edge', () => {
    const flat = outlined(['to: [0, 0]', 'arc: [60, 0], bend: 0', 'to: [60, 40]', 'to: [0, 40]'])
    expect(arcsOf(flat)).toEqual([])
    const on = outlined([
      'to: [0, 0]',
      'to: [30, 0]',
      'arc: [60, 0], tangent: true',
      'to: [60, 40]',
      'to: [0, 40]',
    ])
    expect(areaOf(on)).toBeCloseTo(2400, 9)
  })

  test.each([
    ['arc: [60, 0], radius: 29, turn: left', 'arc-radius-too-small', { least: { value: 30, unit: 'mm' } }],
    ['arc: [60, 0], through: [30, 0]', 'arc-impossible', { why: 'in-line' }],
    ['arc: [60, 0], bend: 360', 'arc-impossible', { why: 'full-turn' }],
    ['arc: [60, 0], tangent: true', 'arc-impossible', { why: 'no-direction' }],
    ['curve: [[30, 10], [30, 10], [60, 0]]', 'curve-impossible', {}],
    ['arc: [60, 0], radius: wide, turn: left', 'size-formula', { found: 'wide' }],
  ])('{ %s } that cannot be drawn finds %s', (step, rule, facts) => {
    const { model, findings } = built(outlinePlan(['to: [0, 0]', step, 'to: [30, 60]']))
    expect(model).toBeUndefined()
    expect(findings).toMatchObject([{ rule, severity: 'error', facts, places: [{ part: 'jib' }] }])
  })
})

test('a curve passes through its points within a tenth of what can be printed', () => {
  // points of the circle about (0, 0) with r 50: the curve through them is that circle
  const on = [20, 40, 60, 90].map(degrees => {
    const angle = (degrees * Math.PI) / 180
    return `[${(50 * Math.cos(angle)).toFixed(9)}, ${(50 * Math.sin(angle)).toFixed(9)}]`
  })
  const part = outlined(['to: [0, 0]', 'to: [50, 0]', `curve: [${on.join(', ')}]`])
  expect(Math.abs(areaOf(part) - (Math.PI * 2500) / 4)).toBeLessThan(0.0005 * 80)
})

describe('a corner of an outline', () => {
  // tangent lengths of a fillet of r 10 at 90°, 60°, 120°: 10, 17.3205, 5.7735; from the definition, by calculation
  test.each([
    [90, 10],
    [60, 17.3205],
    [120, 5.7735],
  ])('of %s° rounded by 10 takes %s of each edge', (degrees, tangent) => {
    const angle = (degrees * Math.PI) / 180
    const tip = `[${(100 * Math.cos(angle)).toFixed(9)}, ${(100 * Math.sin(angle)).toFixed(9)}]`
    const part = outlined(['to: [100, 0]', `to: ${tip}`, 'to: [0, 0], round: 10, corner: nose'])
    const { segments } = part.drawn.outline.outer
    const nose = segments.find(s => s.tag === 'nose')
    expect(nose?.kind === 'arc' && nose.radius).toBeCloseTo(10, 9)
    const beside = segments.filter(s => s.from === nose?.to || s.to === nose?.from)
    for (const edge of beside) expect(segmentLength(edge)).toBeCloseTo(100 - tangent, 3)
    expect(beside).toHaveLength(2)
    expect(part.corners).toMatchObject([{ name: 'nose', kind: 'round', size: { mm: 10 } }])
  })

  test('that is chamfered loses as much of both edges', () => {
    const square = ['to: [0, 0], chamfer: 10', 'to: [60, 0]', 'to: [60, 40]', 'to: [0, 40]']
    expect(areaOf(outlined(square))).toBeCloseTo(2400 - 50, 9)
  })

  test('whose radius the drawing does not give stays sharp and is listed', () => {
    const part = outlined(['to: [0, 0]', 'to: [60, 0], round: unknown, corner: nose', 'to: [60, 40]'])
    expect(areaOf(part)).toBeCloseTo(1200, 9)
    expect(part.missing).toMatchObject([{ kind: 'size', name: 'radius of nose' }])
  })

  test.each([
    ['to: [60, 0], round: 50', 'no-room'],
    ['to: [30, 0], round: 5', 'smooth'],
  ])('{ %s } for which there is no room is found', (step, why) => {
    const { findings } = built(
      outlinePlan(
        ['to: [0, 0]', step, 'to: [60, 0]', 'to: [60, 40]'].toSpliced(2, step.includes('60') ? 1 : 0),
      ),
    )
    expect(findings).toMatchObject([{ rule: 'corner-no-room', facts: { why } }])
  })

  test('two neighbours that need more than the edge between them are found', () => {
    const { findings } = built(
      outlinePlan(['to: [0, 0], round: 25', 'to: [40, 0], round: 25', 'to: [40, 100]', 'to: [0, 100]']),
    )
    expect(findings).toMatchObject([{ rule: 'corner-no-room', facts: { why: 'corners-meet' } }])
  })
})

describe('an outline that bounds no wood', () => {
  const undrawn = (steps: readonly string[], more: readonly string[] = []) => {
    const model = modelOf(outlinePlan(steps, more))
    expect(model.parts).toEqual([])
    return model.undrawn[0]!
  }

  test.each([
    ['crosses itself', ['to: [0, 0]', 'to: [30, 30], name: rise', 'to: [30, 0]', 'to: [0, 30]'], 'crossing'],
    ['lies on itself', ['to: [0, 0]', 'to: [30, 0]', 'to: [10, 0]', 'to: [10, 20]'], 'doubled'],
    ['has no area', ['to: [0, 0]', 'to: [30, 0]'], 'doubled'],
    ['stands still', ['to: [0, 0]', 'to: [30, 0]', 'to: [30, 0]', 'to: [0, 20]'], 'no-length'],
    ['leads away from its axis', ['to: [20, 0]', 'to: [0, 0]', 'to: [0, 30]', 'to: [19, 30]'], 'open'],
  ])('since it %s is carried along as not drawn, with the reason', (_, steps, kind) => {
    const { outlineFaults, missing } = undrawn(steps, kind === 'open' ? ['symmetric: left-right'] : [])
    expect(outlineFaults[0]?.kind).toBe(kind)
    expect(missing).toEqual([])
    if (kind === 'open') expect(outlineFaults[0]?.by).toBeCloseTo(1, 9)
    if (kind === 'crossing') {
      expect(outlineFaults[0]).toMatchObject({ edges: expect.arrayContaining(['rise']) })
      expect(outlineFaults[0]?.at).toEqual({ x: expect.closeTo(15, 6), y: expect.closeTo(15, 6) })
    }
  })

  test('since the drawing leaves a value out says which', () => {
    expect(undrawn(['to: [0, 0]', 'to: [unknown, 0], name: foot', 'to: [0, 9]']).missing).toMatchObject([
      { kind: 'size', name: 'end of foot of the outline' },
    ])
    expect(
      undrawn(['to: [0, 0]', 'arc: [9, 0], radius: unknown, turn: left', 'to: [0, 9]']).missing,
    ).toMatchObject([{ kind: 'size', name: 'radius of edge 2 of the outline' }])
  })
})

describe('one half and its mirror image', () => {
  const half = [
    'to: [50, 0]',
    'to: [10, 0], name: foot',
    'to: [0, 30], name: flank, round: 4',
    'arc: [50, 60], radius: 70, turn: right',
  ]

  test('make one whole, whose edges across the axis are one', () => {
    const part = outlined(half, ['symmetric: left-right'])
    // foot, and on both sides the flank, its rounding and the arc
    expect(part.drawn.outline.outer.segments).toHaveLength(7)
    expect(part.drawn.outline.outer.segments.map(s => s.tag)).toEqual(
      expect.arrayContaining(['foot', 'flank', 'flank-mirrored']),
    )
  })

  test('is as large as both halves drawn in full', () => {
    const whole = outlined(
      [
        'to: [10, 0]',
        'to: [90, 0]',
        'to: [100, 30], round: 4',
        'arc: [50, 60], radius: 70, turn: left',
        'arc: [0, 30], radius: 70, turn: left',
        'to: [10, 0]',
      ].toSpliced(4, 1, 'arc: [0, 30], radius: 70, turn: left, round: 4'),
    )
    const part = outlined(half, ['symmetric: left-right'])
    expect(areaOf(part)).toBeCloseTo(areaOf(whole), 6)
  })

  test('top and bottom are mirrored as left and right are', () => {
    const turned = half.map(step => step.replace(/\[(\d+), (\d+)\]/g, '[$2, $1]').replace('right', 'left'))
    const lying = outlined(turned, ['symmetric: top-bottom'])
    const standing = outlined(half, ['symmetric: left-right'])
    expect(areaOf(lying)).toBeCloseTo(areaOf(standing), 6)
    expect([lying.length.mm, lying.width.mm]).toEqual([
      expect.closeTo(standing.width.mm, 9),
      expect.closeTo(standing.length.mm, 9),
    ])
  })

  test('of any half are their own mirror image', () => {
    const size = fc.integer({ min: 10, max: 40 })
    fc.assert(
      fc.property(size, size, size, fc.integer({ min: 1, max: 40 }), (width, shoulder, height, bend) => {
        const part = outlined(
          [
            'to: [100, 0]',
            `to: [${100 - width - shoulder}, 0]`,
            `to: [${100 - width - shoulder}, ${height}]`,
            `arc: [${100 - width}, ${height}], bend: ${bend}`,
            `to: [100, ${height + 50}]`,
          ],
          ['symmetric: left-right'],
        )
        const corners = part.drawn.outline.outer.segments.map(({ from }) => from)
        for (const { x, y } of corners) {
          const image = corners.some(p => Math.hypot(p.x - (part.length.mm - x), p.y - y) < 1e-6)
          expect(image).toBe(true)
        }
      }),
      { numRuns: 100 },
    )
  })
})

/** Whatever the steps are, there is a model or a finding that says where. */
test('any steps at all give a part, or say why they do not', () => {
  const at = fc.integer({ min: -3, max: 6 })
  const point = fc.tuple(at, at).map(([x, y]) => `[${x}, ${y}]`)
  const step = fc.oneof(
    point.map(p => `to: ${p}`),
    fc
      .tuple(point, fc.integer({ min: 1, max: 9 }), fc.constantFrom('left', 'right'))
      .map(([p, r, turn]) => `arc: ${p}, radius: ${r}, turn: ${turn}`),
    fc.tuple(point, fc.integer({ min: -370, max: 370 })).map(([p, bend]) => `arc: ${p}, bend: ${bend}`),
    fc.tuple(point, point).map(([p, via]) => `arc: ${p}, through: ${via}`),
    point.map(p => `arc: ${p}, tangent: true`),
    fc.array(point, { minLength: 1, maxLength: 4 }).map(points => `curve: [${points.join(', ')}]`),
  )
  const eased = fc
    .tuple(step, fc.constantFrom('', ', round: 1/2', ', chamfer: 1/4', ', round: 3'))
    .map(([s, corner]) => s + corner)
  const symmetric = fc.constantFrom([], ['symmetric: left-right'], ['symmetric: top-bottom'])
  fc.assert(
    fc.property(point, fc.array(eased, { minLength: 1, maxLength: 6 }), symmetric, (start, steps, more) => {
      const { model, findings } = built(outlinePlan([`to: ${start}`, ...steps], more))
      if (model === undefined) expect(findings.length).toBeGreaterThan(0)
      else expect(model.parts.length + model.undrawn.length).toBe(1)
      for (const part of model?.parts ?? []) expect(areaOf(part)).toBeGreaterThan(0)
    }),
    { numRuns: 1500 },
  )
})
