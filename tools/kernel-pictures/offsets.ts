import { createMemory } from '../../src/geometry/boolean/memory.ts'
import { signedArea } from '../../src/geometry/measure/area.ts'
import { offsetPath, offsetRegion } from '../../src/geometry/offset/offset.ts'
import { type PackedCurve, stride } from '../../src/geometry/offset/packed-curve.ts'
import { rawRegions } from '../../src/geometry/offset/raw-curve.ts'
import { circle } from '../../src/geometry/shape/circle.ts'
import type { Contour, Region } from '../../src/geometry/shape/contour.ts'
import { shift } from '../../src/geometry/shape/matrix.ts'
import { polygon, polyline } from '../../src/geometry/shape/polygon.ts'
import { type Arc, line, type Segment } from '../../src/geometry/shape/segment.ts'
import { transformContour } from '../../src/geometry/shape/transform.ts'
import { picture } from './picture.ts'
import { given, plate } from './shapes.ts'

/** A shape with a slit that closes and a bay that does not, so that its raw offset crosses itself. */
function bayed(): Region {
  const outline = polygon([
    { x: 0, y: 0 },
    { x: 70, y: 0 },
    { x: 70, y: 40 },
    { x: 56, y: 40 },
    { x: 50, y: 14 },
    { x: 44, y: 40 },
    { x: 24, y: 40 },
    { x: 20, y: 10 },
    { x: 16, y: 40 },
    { x: 0, y: 40 },
  ])
  return { outer: outline, holes: [circle({ x: 34, y: 25 }, 10)] }
}

/** The raw curve of an offset outward, with what is kept of it. */
export function drawRawOffset(): string {
  const page = picture()
  const region = bayed()
  const delta = 7
  const kept = given(offsetRegion(region, delta))
  page.wood(kept)
  page.contour(region.outer, 'fine')
  for (const hole of region.holes) page.contour(hole, 'fine')
  const raw = rawRegions([region], { delta, join: 'round', mitreLimit: 4, end: 'round' }, createMemory())
  page.segments(segmentsOf(raw.curve), 'dashed')
  for (const r of kept) for (const c of [r.outer, ...r.holes]) page.contour(c, 'thick')
  return page.finish(
    'A raw offset crosses itself; what is wound round more than zero times is the offset',
    160,
  )
}

function segmentsOf({ count, data }: PackedCurve): readonly Segment[] {
  return Array.from({ length: count }, (_, k): Segment => {
    const [x0, y0, x1, y1, cx, cy, radius, turn] = data.subarray(
      k * stride,
      (k + 1) * stride,
    ) as unknown as number[]
    const from = { x: x0!, y: y0! }
    const to = { x: x1!, y: y1! }
    if (turn === 0) return line(from, to)
    const arc: Arc = {
      kind: 'arc',
      from,
      to,
      centre: { x: cx!, y: cy! },
      radius: radius!,
      turn: turn === 1 ? 1 : -1,
    }
    return arc
  })
}

/** The three joins on one corner, the three ends on one path. */
export function drawJoins(): string {
  const page = picture()
  const path = polyline([
    { x: 0, y: 0 },
    { x: 24, y: 6 },
    { x: 8, y: 24 },
  ])
  const looks = [
    ['round', 'round'],
    ['mitre', 'flat'],
    ['bevel', 'square'],
  ] as const
  looks.forEach(([join, end], i) => {
    const here = transformContour(path, shift(i * 50, 0))
    const band = given(offsetPath(here, 6, { join, end }))
    page.wood(band)
    page.contour(here, 'dashed')
    for (const r of band) for (const c of [r.outer, ...r.holes]) page.contour(c, 'thick')
    page.words({ x: i * 50 + 12, y: -15 }, `join ${join}, end ${end}`, 3.2)
  })
  return page.finish('Joins and ends', 180)
}

/** A shape grown and shrunk step by step: it parts and vanishes, its holes close, its arcs stay arcs. */
export function drawSteps(): string {
  const page = picture()
  const region = plate()
  const steps: readonly (readonly Contour[])[] = [-8, -6, -4, -2, 2, 4, 6, 8].map(delta =>
    given(offsetRegion(region, delta)).flatMap(r => [r.outer, ...r.holes]),
  )
  page.wood([region])
  for (const contours of steps) for (const c of contours) if (signedArea(c) !== 0) page.contour(c, 'thin')
  page.contour(region.outer, 'thick')
  for (const hole of region.holes) page.contour(hole, 'thick')
  return page.finish('Offsets of one region by steps of 2 mm, outward and inward', 150)
}
