import { sayFace } from '../../finding/face-name.ts'
import { middleOfBounds } from '../../geometry/measure/bounds.ts'
import type { Point } from '../../geometry/shape/point.ts'
import { nearestName } from '../../length/nearest-name.ts'
import type {
  Concentric,
  DistancePlan,
  FromFeature,
  FromSides,
  PositionPlan,
  TowardPlan,
} from '../../plan/plan.ts'
import { type Feature, isPlaced, type Missing, type Placed } from '../feature.ts'
import { onPlane, type Pose, toPart } from '../pose.ts'
import { shapeBounds } from '../shape-bounds.ts'
import type { FaceFrame } from './face-frame.ts'
import { measuredAlong, resolveDistance } from './resolve-size.ts'
import type { Site } from './site.ts'

/** How far what is to be placed on a face reaches along and across, in millimetres; nothing for a hole's centre. */
export type Reach = { readonly along: number; readonly across: number }

/** The middle of something on a face, what its place lacks, or nothing where a fault has been reported. */
export type PlacedAt = { readonly at: Point } | { readonly missing: readonly Missing[] } | undefined

/**
 * The middle of something on a face, in the face's millimetres. A distance leads to the near side of what is placed.
 * Where the plan gives no distance, or one that the drawing does not give, the direction is listed as missing.
 */
export function place(site: Site, frame: FaceFrame, position: PositionPlan, reach: Reach): PlacedAt {
  switch (position.kind) {
    case 'from-sides':
      return placeFromSides(site, frame, position, reach)
    case 'from-feature':
      return placeFromFeature(site, frame, position, reach)
    case 'concentric':
      return placeConcentric(site, frame, position)
  }
}

function placeFromSides(site: Site, frame: FaceFrame, position: FromSides, reach: Reach): PlacedAt {
  const along = coordinate(site, frame, position.along, frame.along, reach.along)
  const across = coordinate(site, frame, position.across, frame.across, reach.across)
  if (along === undefined || across === undefined) return undefined
  const missing = [along, across].flatMap(c => ('missing' in c ? [c.missing] : []))
  if (missing.length > 0) return { missing }
  const at = { x: 0, y: 0 }
  for (const c of [along, across]) if ('axis' in c) at[c.axis] = c.value
  return { at }
}

type Coordinate = { axis: 'x' | 'y'; value: number } | { missing: Missing }

/** One coordinate of the middle of something that reaches so far, between two sides of its face. */
export function coordinate(
  { context }: Site,
  frame: FaceFrame,
  given: DistancePlan | undefined,
  between: FaceFrame['along'],
  reach: number,
): Coordinate | undefined {
  if (given === undefined) return { missing: { kind: 'distance', between } }
  if (given.kind === 'centre') {
    const [near, far] = [frame.ruler(between[0]), frame.ruler(between[1])]
    return { axis: near.axis, value: (near.start + far.start) / 2 }
  }
  const { axis, start, sign } = frame.ruler(given.side)
  const size = resolveDistance(measuredAlong(context, axis), given.length)
  if (size === undefined) return undefined
  if (size === 'unknown') return { missing: { kind: 'distance', between } }
  return { axis, value: start + sign * (size.mm + reach / 2) }
}

function placeFromFeature(site: Site, frame: FaceFrame, position: FromFeature, reach: Reach): PlacedAt {
  const base = middleOf(site, frame, position)
  if (base === undefined || 'missing' in base) return base
  const at = { ...base.at }
  const missing: Missing[] = []
  for (const direction of ['along', 'across'] as const) {
    const given: TowardPlan | undefined = position[direction]
    if (given === undefined) continue
    const { axis, sign } = frame.ruler(given.toward)
    const size = resolveDistance(measuredAlong(site.context, axis), given.length)
    if (size === undefined) return undefined
    if (size === 'unknown') missing.push({ kind: 'distance', between: frame[direction] })
    else {
      // toward a side is against the direction that leads away from it
      at[axis] -= sign * (size.mm + reach[direction] / 2)
    }
  }
  return missing.length > 0 ? { missing } : { at }
}

/** The middle of the cut that another one is placed from, as it lies under the other's face. */
function middleOf(site: Site, frame: FaceFrame, { feature }: FromFeature): PlacedAt {
  const { context } = site
  const [cut = '', number] = feature.value.split('.')
  const built = site.built(cut)
  const place = { source: feature.source }
  if (built === undefined) {
    const nearest = nearestName(cut, site.cutNames)
    context.report({
      rule: 'unknown-cut',
      severity: 'error',
      places: [place],
      facts: {
        found: cut,
        within: context.place.part ?? '',
        allowed: site.cutNames.join(', '),
        ...(nearest === undefined ? {} : { nearest }),
      },
    })
    return undefined
  }
  const found = member(built, number)
  if (found === undefined) {
    // what could not be built has been reported already
    if (built.length === 0) return undefined
    context.report({
      rule: 'unknown-member',
      severity: 'error',
      places: [place],
      facts: { found: feature.value, row: cut, count: { value: built.length, unit: 'count' } },
    })
    return undefined
  }
  if (!isPlaced(found)) return { missing: [{ kind: 'place-of', cut }] }
  const pose = poseOf(site, found)
  if (pose === undefined) return undefined
  if (Math.abs(alignment(pose, frame.pose)) > 1 / 2) {
    return { at: onPlane(frame.pose, toPart(pose, centreOf(found))) }
  }
  context.report({
    rule: 'from-other-face',
    severity: 'error',
    places: [place],
    facts: {
      cut: feature.value,
      face: sayFace(found.face),
      wanted: 'a cut on the same face or on the opposite one',
    },
  })
  return undefined
}

/** One feature of a cut: that with the number, or else the first. */
function member(built: readonly Feature[], number: string | undefined): Feature | undefined {
  if (number === undefined) return built[0]
  return built.find(({ row, shape }) => shape.kind === 'unplaced' || row?.number === Number(number))
}

function poseOf(site: Site, { face }: Feature): Pose | undefined {
  return site.frame(face)?.pose
}

/** 1 where two faces look the same way, −1 where they look opposite ways, 0 where they are square to each other. */
function alignment(a: Pose, b: Pose): number {
  return a.out.x * b.out.x + a.out.y * b.out.y + a.out.z * b.out.z
}

/** A bore's centre, and the middle of the rectangle round anything else. */
export function centreOf({ shape }: Placed): Point {
  if (shape.kind === 'bore') return shape.centre
  return middleOfBounds(shapeBounds(shape))
}

function placeConcentric(site: Site, frame: FaceFrame, { with: name }: Concentric): PlacedAt {
  if (site.unknownCorners.includes(name.value)) {
    return { missing: [{ kind: 'place-of', cut: `the ${name.value} corner` }] }
  }
  const arcs = [site.outline.outer, ...site.outline.holes].flatMap(({ segments }) =>
    segments.flatMap(s =>
      s.kind === 'arc' && s.tag !== undefined ? [{ name: s.tag, centre: s.centre }] : [],
    ),
  )
  const arc = arcs.find(a => a.name === name.value)
  const front = site.frame('front')
  if (arc !== undefined && front !== undefined && Math.abs(alignment(front.pose, frame.pose)) > 1 / 2) {
    return { at: onPlane(frame.pose, toPart(front.pose, arc.centre)) }
  }
  const known = [...new Set(arcs.map(a => a.name))]
  const nearest = nearestName(name.value, known)
  site.context.report({
    rule: 'unknown-arc',
    severity: 'error',
    places: [{ source: name.source }],
    facts: { found: name.value, allowed: known.join(', '), ...(nearest === undefined ? {} : { nearest }) },
  })
  return undefined
}
