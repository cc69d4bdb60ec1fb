import { middleOfBounds, regionBounds } from '../../geometry/measure/bounds.ts'
import { inscribedCircle } from '../../geometry/measure/inscribed-circle.ts'
import { pointInRegion } from '../../geometry/measure/inside.ts'
import { nearestOnRegion } from '../../geometry/measure/nearest.ts'
import type { Bounds, Region } from '../../geometry/shape/contour.ts'
import type { Point } from '../../geometry/shape/point.ts'
import type { Placed } from '../../model/feature.ts'
import { shapeBounds } from '../../model/shape-bounds.ts'
import type { Fonts } from '../../text/fonts.ts'
import { engravedBox } from '../engraved-letters.ts'
import { boxAbout } from '../label/find-place.ts'
import type { Stretch } from '../label/touch.ts'
import { boreRadius } from './bore-marks.ts'
import { crossReach } from './hole-marks.ts'

/** What a letter belongs to: a ring with its cross, what is cut out, the box round what is engraved, or a point of a line. */
export type Target =
  | { readonly kind: 'point'; readonly at: Point }
  | { readonly kind: 'ring'; readonly centre: Point; readonly radius: number }
  | { readonly kind: 'region'; readonly region: Region }
  | { readonly kind: 'box'; readonly box: Bounds }

export function targetOf({ shape }: Placed, fonts: Fonts): Target {
  switch (shape.kind) {
    case 'bore':
      return { kind: 'ring', centre: shape.centre, radius: boreRadius(shape) }
    case 'engraved-lines':
      return { kind: 'box', box: shapeBounds(shape) }
    case 'engraved-text':
      return { kind: 'box', box: engravedBox(shape, fonts) }
    default:
      return { kind: 'region', region: shape.region }
  }
}

/** What letters stand round: of a ring the square in it, so that a letter on the diagonal comes near to it. */
export function coreOf(target: Target): Bounds {
  if (target.kind === 'region') return regionBounds(target.region)
  if (target.kind === 'box') return target.box
  if (target.kind === 'point') return boxAbout(target.at, { width: 0, height: 0 })
  const side = target.radius * Math.SQRT2
  return boxAbout(target.centre, { width: side, height: side })
}

/** Finding the middle of the widest place need not be more exact than this. */
const widestDeviation = 0.5

/** Where a letter can stand in the waste itself: in the middle, or in the widest place of what has none. */
export function insideOf(target: Target): readonly Point[] {
  if (target.kind !== 'region') return []
  const middle = middleOfBounds(regionBounds(target.region))
  if (pointInRegion(target.region, middle) === 'inside') return [middle]
  const widest = inscribedCircle(target.region, widestDeviation)
  return widest === undefined ? [] : [widest.centre]
}

/**
 * A line from what a letter belongs to, free of it, to the letter that stands off; none where that stands near, or
 * in it.
 */
export function leaderTo(target: Target, letter: Bounds): Stretch | undefined {
  const aim = aimOf(target, middleOfBounds(letter))
  if (aim === undefined) return undefined
  const end = nearestIn(letter, aim)
  const away = Math.hypot(end.x - aim.x, end.y - aim.y)
  const start = target.kind === 'ring' ? crossReach(target.radius) + leaderGap : leaderGap
  // a short line in the direction of a cross would be taken for its arm
  const inLine = target.kind === 'ring' && (end.x === aim.x || end.y === aim.y)
  if (away - start - leaderGap < (inLine ? shortestInLine : shortestLeader)) return undefined
  const at = (distance: number): Point => ({
    x: aim.x + ((end.x - aim.x) / away) * distance,
    y: aim.y + ((end.y - aim.y) / away) * distance,
  })
  return [at(start), at(away - leaderGap)]
}

/** White at both ends of a leader. */
const leaderGap = 0.5
/** A letter that stands nearer than this needs no line to say where it belongs. */
const shortestLeader = 1.5
const shortestInLine = 4

function aimOf(target: Target, from: Point): Point | undefined {
  if (target.kind === 'ring') return target.centre
  if (target.kind === 'box') return nearestIn(target.box, from)
  if (target.kind === 'point') return target.at
  if (pointInRegion(target.region, from) === 'inside') return undefined
  return nearestOnRegion(target.region, from)?.point
}

function nearestIn(box: Bounds, p: Point): Point {
  return { x: Math.min(Math.max(p.x, box.left), box.right), y: Math.min(Math.max(p.y, box.bottom), box.top) }
}
