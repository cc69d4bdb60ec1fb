import type { FaceName } from '../../finding/face-name.ts'
import { boundsOfRegions, regionBounds } from '../../geometry/measure/bounds.ts'
import type { Bounds, Region } from '../../geometry/shape/contour.ts'
import { transformRegion } from '../../geometry/shape/transform.ts'
import { isPlaced, type Placed } from '../../model/feature.ts'
import { silhouette } from '../../model/finished-outline.ts'
import { faceOf, type Part } from '../../model/part.ts'
import { onPlane, type Pose, toPart } from '../../model/pose.ts'
import { throughPoses } from './between-poses.ts'
import { goesThrough } from './choose-views.ts'

/** A part as somebody sees it who looks straight at one of its faces; all of it in the face's own millimetres. */
export type View = {
  readonly face: FaceName
  readonly pose: Pose
  /** The wood when the notches are cut, as far as it is seen: of the front and back the outline, of the others the rectangle they lie in. */
  readonly wood: readonly Region[]
  readonly box: Bounds
  /** What is dimensioned here: what is cut into this face, and into the front's back where it comes through. */
  readonly own: readonly Placed[]
  /** What is cut into other faces. */
  readonly others: readonly Placed[]
}

export function viewOf({ drawn }: Pick<Part, 'drawn'>, id: FaceName): View {
  const face = faceOf(drawn, id)
  const flat = id === 'front' || id === 'back'
  const finished = silhouette(drawn)
  const fromFront = throughPoses(drawn.faces.front.pose, face.pose)
  const wood = flat && finished.length > 0 ? finished.map(r => transformRegion(r, fromFront)) : [face.region]
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
  const box = flat ? boundsOfRegions(wood) : regionBounds(face.region)
  return { face: id, pose: face.pose, wood, box, own, others }
}
