import { signedArea } from '../../../src/geometry/measure/area.ts'
import { boundsOfRegions, contourBounds } from '../../../src/geometry/measure/bounds.ts'
import { pointInContour } from '../../../src/geometry/measure/inside.ts'
import { offsetPath, offsetRegions } from '../../../src/geometry/offset/offset.ts'
import type { Contour, Region } from '../../../src/geometry/shape/contour.ts'
import {
  compose,
  identity,
  type Matrix,
  mirrorAcross,
  scale,
  shift,
  turn,
} from '../../../src/geometry/shape/matrix.ts'
import type { Outcome } from '../../../src/geometry/shape/outcome.ts'
import type { Point } from '../../../src/geometry/shape/point.ts'
import { transformContour, transformRegion } from '../../../src/geometry/shape/transform.ts'
import { coincident } from '../../../src/number/tolerance.ts'
import { comb } from '../generate/comb.ts'
import { gear } from '../generate/gear.ts'
import { jitterRegion } from '../generate/jitter.ts'
import { randomLetter } from '../generate/letter.ts'
import { pick, randomFrom, whole } from '../generate/random.ts'
import { cellRegion, plate, roundaboutOutline, twoArcs } from '../generate/random-outline.ts'
import { gridPath, spiralPath, wanderingPath } from '../generate/random-path.ts'
import { crossesItself } from './crosses-itself.ts'
import {
  type Asked,
  belongs,
  contoursOf,
  distanceTo,
  isInside,
  middleOf,
  promised,
  roundAllOver,
  sourceOf,
} from './offset-laws.ts'

/** What is wrong with the offset of a case; `undefined` when it keeps every law. */
export type Trouble = { readonly law: string; readonly at?: Point; readonly by?: number | string }

/** Much less, and the band of a path is thinner than the promise is wide. */
const leastSize = 0.01

/** The case that belongs to a seed: what is offset, by how much and how; undefined where no valid shape comes out. */
export function offsetCase(seed: number): Asked | undefined {
  const random = randomFrom(seed)
  const family = pick(random, [
    'star',
    'star',
    'cells',
    'plate',
    'arcs',
    'comb',
    'gear',
    'letter',
    'path',
    'grid',
    'spiral',
  ])
  const options = {
    join: pick(random, ['round', 'round', 'round', 'mitre', 'bevel'] as const),
    mitreLimit: pick(random, [1, 2, 4, 10]),
    end: pick(random, ['round', 'round', 'flat', 'square'] as const),
    joinTag: 'join',
  }
  const size = pick(random, [random() * 3, random() * 0.3, whole(random, 1, 8) / 2, 0.25, 6 * random()])
  const delta = Math.max(size, leastSize) * pick(random, [1, -1])
  const move = placement(random)
  const shape = shapeOf(family, random)
  if (shape === undefined) {
    const path = transformContour(pathOf(family, random), move)
    return { kind: 'path', path, delta: Math.abs(delta) / 2, options }
  }
  const regions = companions(random, roughened(random, shape), delta).map(r => transformRegion(r, move))
  return crossesItself(contoursOf(regions)) ? undefined : { kind: 'regions', regions, delta, options }
}

/**
 * Half of the cases stay where they are, on whole numbers, so that edges coincide exactly; the others are
 * turned and pushed up to 10 m away, so that they coincide but for rounding.
 */
function placement(random: () => number): Matrix {
  const turned = pick(random, [identity, identity, turn(2 * Math.PI * random()), mirrorAcross(random())])
  const away = pick(random, [0, 0, 1, 10_000])
  return compose(turned, shift(away * random(), away * random()))
}

/** A shape as it is, or with its corners moved by anything from 1e-1 to 1e-12 mm. */
function roughened(random: () => number, shape: readonly Region[]): readonly Region[] {
  if (random() < 0.6) return shape
  const size = 10 ** -whole(random, 1, 12)
  return shape.map(region => jitterRegion(region, size, random))
}

/** A shape alone, or with a copy of itself beside it, at a gap that the offset just fills or nearly does. */
function companions(random: () => number, shape: readonly Region[], delta: number): readonly Region[] {
  if (random() < 0.8) return shape
  const { left, right } = boundsOfRegions(shape)
  const miss = pick(random, [0, 0.1, 1e-3, 1e-5, 1e-7, 1e-9, 1e-12]) * pick(random, [1, -1])
  const step = right - left + Math.max(2 * Math.abs(delta) + miss, 0.01)
  return [...shape, ...shape.map(region => transformRegion(region, shift(step, 0)))]
}

/** The regions of a letter, the one region of any other family; none for a path. */
function shapeOf(family: string, random: () => number): readonly Region[] | undefined {
  if (family === 'letter') return randomLetter(random)
  const region = regionOf(family, random)
  return region === undefined ? undefined : [region]
}

function regionOf(family: string, random: () => number): Region | undefined {
  if (family === 'star') {
    const outer = roundaboutOutline(
      random,
      pick(random, [whole(random, 3, 14), whole(random, 3, 14), 40]),
      pick(random, [0, 0.002, 0.4, 1.2]),
    )
    if (random() < 0.7) return { outer, holes: [] }
    const hole = roundaboutOutline(random, whole(random, 3, 8), pick(random, [0, 0.4]))
    const wide = transformContour(outer, scale(2))
    const inner = transformContour(hole, scale(0.3))
    return { outer: wide, holes: pointInContour(wide, inner.segments[0]!.from) === 'inside' ? [inner] : [] }
  }
  if (family === 'cells') return cellRegion(random, whole(random, 1, 16), pick(random, [1, 2, 3]))
  if (family === 'plate') return plate(random)
  if (family === 'arcs') return twoArcs(random)
  if (family === 'comb') return comb(whole(random, 2, 5), whole(random, 2, 12))
  if (family === 'gear') return gear(whole(random, 3, 9))
  return undefined
}

function pathOf(family: string, random: () => number): Contour {
  if (family === 'path') return wanderingPath(random, whole(random, 1, 7), pick(random, [0, 0.8]))
  if (family === 'grid') return gridPath(random, whole(random, 1, 8), 1)
  return spiralPath(whole(random, 1, 8), pick(random, [1, 2, 1 + random()]))
}

export function runAsked(asked: Asked): Outcome<readonly Region[]> {
  return asked.kind === 'path'
    ? offsetPath(asked.path, asked.delta, asked.options)
    : offsetRegions(asked.regions, asked.delta, asked.options)
}

/** Offsets a case and checks the result against the laws, with sample points drawn from the same seed. */
export function troubleWith(asked: Asked, seed: number): Trouble | undefined {
  const outcome = runAsked(asked)
  if (!outcome.ok) return { law: `no result: ${outcome.fault.reason}` }
  const regions = outcome.value
  return formTrouble(regions) ?? distanceTrouble(asked, regions) ?? memberTrouble(asked, regions, seed)
}

/** Contours are closed, run the right way, share their points, keep their radii and do not cross. */
function formTrouble(regions: readonly Region[]): Trouble | undefined {
  for (const region of regions) {
    if (!(signedArea(region.outer) > 0)) return { law: 'an outer contour runs counter-clockwise' }
    if (region.holes.some(h => !(signedArea(h) < 0))) return { law: 'a hole runs clockwise' }
  }
  for (const { segments, closed } of contoursOf(regions)) {
    if (!closed || segments.length < 2) return { law: 'contours are closed' }
    for (let i = 0; i < segments.length; i++) {
      const s = segments[i]!
      if (s.to !== segments[(i + 1) % segments.length]!.from)
        return { law: 'neighbours share a point', at: s.to }
      if (s.kind === 'line') continue
      for (const p of [s.from, s.to]) {
        const off = Math.abs(Math.hypot(p.x - s.centre.x, p.y - s.centre.y) - s.radius)
        if (off > 2 * coincident) return { law: 'arcs keep their radius', at: p, by: off }
      }
    }
  }
  return crossesItself(contoursOf(regions)) ? { law: 'contours do not cross' } : undefined
}

/** With round joins and ends every point of the boundary has the distance. */
function distanceTrouble(asked: Asked, regions: readonly Region[]): Trouble | undefined {
  if (!roundAllOver(asked)) return undefined
  const { delta } = asked
  const source = sourceOf(asked)
  for (const contour of contoursOf(regions)) {
    for (const s of contour.segments) {
      for (const p of [s.from, middleOf(s)]) {
        const off = distanceTo(source, p) - Math.abs(delta)
        if (Math.abs(off) > promised) return { law: 'every point has the distance', at: p, by: off }
      }
    }
  }
  return undefined
}

const samples = 60

/** Points anywhere, and points just beside the result's boundary, belong to it or not as the definition says. */
function memberTrouble(asked: Asked, regions: readonly Region[], seed: number): Trouble | undefined {
  const random = randomFrom(seed ^ 0x5bd1e995)
  const around = asked.kind === 'path' ? contourBounds(asked.path) : boundsOfRegions(asked.regions)
  const margin = Math.abs(asked.delta) + 1
  const boundary = contoursOf(regions).flatMap(c => c.segments)
  const joints = sourceOf(asked).flatMap(c => c.segments)
  for (let i = 0; i < samples; i++) {
    let p: Point
    if (i % 3 === 0 && boundary.length > 0) {
      const m = middleOf(pick(random, boundary))
      p = { x: m.x + 0.02 * (random() - 0.5), y: m.y + 0.02 * (random() - 0.5) }
    } else if (i % 3 === 1) {
      const s = pick(random, joints).from
      p = { x: s.x + 2.5 * asked.delta * (random() - 0.5), y: s.y + 2.5 * asked.delta * (random() - 0.5) }
    } else {
      p = {
        x: around.left - margin + (around.right - around.left + 2 * margin) * random(),
        y: around.bottom - margin + (around.top - around.bottom + 2 * margin) * random(),
      }
    }
    const should = belongs(asked, p)
    if (should === isInside(regions, p)) continue
    // a point within the promise of the boundary may be on either side of it
    const clear = [0, 1, 2, 3, 4, 5, 6, 7].every(k => {
      const angle = (k * Math.PI) / 4
      return (
        belongs(asked, { x: p.x + promised * Math.cos(angle), y: p.y + promised * Math.sin(angle) }) ===
        should
      )
    })
    if (clear) return { law: should ? 'what belongs is inside' : 'what does not belong is outside', at: p }
  }
  return undefined
}
