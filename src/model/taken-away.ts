import { leftOf, tangentAt } from '../geometry/measure/along.ts'
import { signedArea } from '../geometry/measure/area.ts'
import type { Region } from '../geometry/shape/contour.ts'
import { depthUnder } from './box-faces.ts'
import type { Placed } from './feature.ts'
import { faceOf, type Solid } from './part.ts'
import { type Point3, type Pose, toPart } from './pose.ts'
import { extentOf } from './solid-extent.ts'
import { lineOfStrip } from './strip.ts'

/**
 * A body that a cut takes out of the wood: what lies under a region of a face, so deep straight into the wood; of that,
 * where there is a `slope`, only what lies on the side of the slope that its `out` leads to.
 */
export type TakenAway = {
  readonly pose: Pose
  readonly region: Region
  readonly depth: number
  readonly slope?: Slope
}

/** A plane by one of its points, and the unit vector square to it that leaves the wood that stays. */
export type Slope = { readonly point: Point3; readonly out: Point3 }

/**
 * What a slot, cut-out, notch, groove, rebate or bevel takes away, exactly; of an arris that is cut off aslant or
 * rounded a body that holds what goes: of a rounding the chamfer between its ends, of a whole rim the step round it.
 * Nothing for bores, which have a shape of their own, and for engraving, which is no deeper than it shows.
 */
export function takenAway(solid: Solid, { face, shape }: Placed): TakenAway | undefined {
  const { pose } = faceOf(solid, face)
  const through = depthUnder(face, extentOf(solid))
  switch (shape.kind) {
    case 'bore':
    case 'engraved-lines':
    case 'engraved-text':
      return undefined
    case 'pocket':
      return {
        pose,
        region: shape.region,
        depth: shape.depth === 'through' ? through : shape.depth.mm,
      }
    case 'cut-out':
    case 'edge-cut':
      return { pose, region: shape.region, depth: through }
    case 'groove':
    case 'rebate':
      return { pose, region: shape.region, depth: shape.depth.mm }
    case 'bevel':
      return sloping(pose, shape.region, shape.shorter.mm, through)
    case 'chamfer':
      return sloping(pose, shape.region, shape.width.mm, shape.depth.mm)
    case 'round-over':
      return sloping(pose, shape.region, shape.radius.mm, shape.radius.mm)
  }
}

/**
 * Under a strip: all that is nearer to its edge than the plane through the line where it begins, `width` from that
 * edge, and the place `depth` below the edge. Only the whole prism where the strip has no straight line.
 */
function sloping(pose: Pose, region: Region, width: number, depth: number): TakenAway {
  const line = region.outer.segments.find(s => s.kind === 'line' && s.tag === lineOfStrip)
  if (line === undefined || region.holes.length > 0) return { pose, region, depth }
  const left = leftOf(tangentAt(line, 0))
  // what a contour holds lies left of it where it runs counter-clockwise
  const turns = Math.sign(signedArea(region.outer))
  const size = Math.hypot(width, depth)
  const across = (turns * depth) / size
  const up = width / size
  const { right: x, up: y, out: z } = pose
  const outward = (axis: 'x' | 'y' | 'z') => across * (left.x * x[axis] + left.y * y[axis]) + up * z[axis]
  const out: Point3 = { x: outward('x'), y: outward('y'), z: outward('z') }
  return { pose, region, depth, slope: { point: toPart(pose, line.from), out } }
}
