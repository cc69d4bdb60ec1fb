import type { FaceName } from '../../finding/face-name.ts'
import { shift } from '../../geometry/shape/matrix.ts'
import { transformRegion } from '../../geometry/shape/transform.ts'
import { dot } from '../../geometry/solid/point3.ts'
import { axisOf } from '../../model/bore/axis.ts'
import { wayOut } from '../../model/bore/way-through.ts'
import { type Bore, type Groove, isPlaced, type Placed, type Pocket } from '../../model/feature.ts'
import { faceOf, type Solid } from '../../model/part.ts'
import { toPart } from '../../model/pose.ts'
import { coincident } from '../../number/tolerance.ts'
import type { Block } from './block.ts'

/** What is made by lines of a face: bored, or cut into it. */
export type Entering = Placed & { readonly shape: Bore | Pocket | Groove }

/** What shows on a face of a block, in the face's own millimetres. */
export type OnFace = {
  /** What is bored or cut from there. */
  readonly enters: readonly Entering[]
  /** Where holes come out, with what they are called. */
  readonly exits: readonly { readonly id: string; readonly bore: Bore }[]
}

/** A hole that comes out so slantingly has no end that could be marked. */
const flattest = Math.PI * 0.45

/** What is seen on the faces of a block that bear anything at all. */
export function onFaces(solid: Solid, block: Block): ReadonlyMap<FaceName, OnFace> {
  const shown = new Map<FaceName, { enters: Entering[]; exits: { id: string; bore: Bore }[] }>()
  const on = (face: FaceName) => {
    const known = shown.get(face) ?? { enters: [], exits: [] }
    shown.set(face, known)
    return known
  }
  for (const feature of solid.features.filter(isPlaced)) {
    const { id, face, shape } = feature
    if (shape.kind === 'bore') {
      const { pose } = faceOf(solid, face)
      const centre = block.seenOn(face, toPart(pose, shape.centre))
      on(face).enters.push({ ...feature, shape: { ...shape, centre } })
      const exit = exitOf(solid, feature.face, shape, block)
      if (exit !== undefined) on(exit.face).exits.push({ id, bore: exit.bore })
    } else if (shape.kind === 'pocket' || shape.kind === 'groove') {
      const { x, y } = block.seenOn(face, toPart(faceOf(solid, face).pose, { x: 0, y: 0 }))
      on(face).enters.push({
        ...feature,
        shape: { ...shape, region: transformRegion(shape.region, shift(x, y)) },
      })
    }
  }
  return shown
}

/** Where a bore that goes through comes out, as the hole that it makes there. */
function exitOf(
  solid: Solid,
  face: FaceName,
  bore: Bore,
  block: Block,
): { readonly face: FaceName; readonly bore: Bore } | undefined {
  if (bore.depth !== 'through') return undefined
  const out = wayOut(solid, { face, shape: bore })
  if (out?.face === undefined) return undefined
  const { into } = axisOf(bore, faceOf(solid, face).pose)
  const { pose } = faceOf(solid, out.face)
  const [along, up] = [dot(into, pose.right), dot(into, pose.up)]
  const angle = Math.atan2(Math.hypot(along, up), dot(into, pose.out))
  if (angle > flattest) return undefined
  const { kind, diameter, depth } = bore
  const straight = { kind, diameter, depth, centre: block.seenOn(out.face, out.point) }
  // a straight hole leaves an edge that is askew at a slant
  const leaning = Math.hypot(along, up) > coincident
  return {
    face: out.face,
    bore: leaning ? { ...straight, lean: { toward: Math.atan2(up, along), angle, given: [] } } : straight,
  }
}
