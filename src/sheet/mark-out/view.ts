import type { FaceName } from '../../finding/face-name.ts'
import { difference } from '../../geometry/boolean/index.ts'
import { regionBounds } from '../../geometry/measure/bounds.ts'
import type { Bounds, Region } from '../../geometry/shape/contour.ts'
import { transformRegion } from '../../geometry/shape/transform.ts'
import { dot } from '../../geometry/solid/point3.ts'
import { isPlaced, type Placed } from '../../model/feature.ts'
import { finishedOutline } from '../../model/finished-outline.ts'
import { faceOf, type Part, type Solid } from '../../model/part.ts'
import { onPlane, type Pose, toPart } from '../../model/pose.ts'
import { coincident } from '../../number/tolerance.ts'
import { throughPoses } from './between-poses.ts'
import { goesThrough } from './choose-views.ts'
import { profileOf } from './profile.ts'

/** A part as somebody sees it who looks straight at one of its faces; all of it in the face's own millimetres. */
export type View = {
  readonly face: FaceName
  readonly pose: Pose
  /** The wood when all is cut that goes right through from this face: of the front and back the outline, of the others the rectangle they lie in. */
  readonly wood: readonly Region[]
  /** The whole face, on which everything is marked before anything is cut. */
  readonly box: Bounds
  /** What is dimensioned here: what is cut into this face, and into the front's back where it comes through. */
  readonly own: readonly Placed[]
  /** What is cut into other faces. */
  readonly others: readonly Placed[]
}

export function viewOf({ drawn }: Pick<Part, 'drawn'>, id: FaceName): View {
  const face = faceOf(drawn, id)
  const flat = id === 'front' || id === 'back'
  const finished = finishedOutline(drawn)
  const fromFront = throughPoses(drawn.faces.front.pose, face.pose)
  // notches may leave nothing of a part; the check says so
  const end = flat ? [face.region] : endWood(drawn, id)
  const wood = flat && finished.length > 0 ? finished.map(r => transformRegion(r, fromFront)) : end
  const own: Placed[] = []
  const others: Placed[] = []
  for (const feature of drawn.features.filter(isPlaced)) {
    const { shape } = feature
    if (feature.face === id) own.push(feature)
    else if (id === 'front' && feature.face === 'back' && shape.kind === 'bore' && goesThrough(feature)) {
      const centre = onPlane(face.pose, toPart(drawn.faces.back.pose, shape.centre))
      own.push({ ...feature, shape: { ...shape, centre } })
    } else others.push(feature)
  }
  return { face: id, pose: face.pose, wood, box: regionBounds(face.region), own, others }
}

/** What an end or edge is when the grooves and the like are cut that run from it through all the wood behind it. */
function endWood(solid: Solid, id: FaceName): readonly Region[] {
  const { pose, region } = faceOf(solid, id)
  const gone = solid.features.filter(isPlaced).flatMap((feature): Region[] => {
    const square = Math.abs(dot(faceOf(solid, feature.face).pose.out, pose.out)) < coincident
    if (!square || feature.shape.kind === 'edge-cut') return []
    const profile = profileOf(feature, solid, { face: id, pose })
    return profile?.opens === 'through' ? [{ outer: profile.contour, holes: [] }] : []
  })
  const left = gone.length === 0 ? undefined : difference([region], gone)
  return left?.ok && left.value.length > 0 ? left.value : [region]
}
