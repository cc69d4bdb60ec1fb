import type { FaceName } from '../../finding/face-name.ts'
import { sides } from '../../finding/side.ts'
import { isPlaced, isPlain, type Placed } from '../../model/feature.ts'
import type { Part, Solid } from '../../model/part.ts'
import { profileFace } from './profile.ts'

/**
 * The faces that a mark-out shows: the front; the others that something is cut into; and one along which the thickness is
 * seen where a cut in the front or back has a depth, or leans.
 */
export function chooseViews({
  drawn,
  faceEdge,
  referenceEnd,
}: Pick<Part, 'drawn' | 'faceEdge' | 'referenceEnd'>): readonly FaceName[] {
  const placed = drawn.features.filter(isPlaced)
  const cutInto = new Set<FaceName>(placed.filter(feature => !seenOnFront(feature)).map(({ face }) => face))
  const shown: FaceName[] = ['front', ...sides.filter(side => side !== 'front' && cutInto.has(side))]
  const alongThickness: readonly FaceName[] = ['top', 'bottom', 'left', 'right']
  for (const feature of placed) {
    const by = profileFace(feature, drawn)
    const face = by === 'end' ? referenceEnd : by === 'edge' ? faceEdge : undefined
    if (face !== undefined && !shown.includes(face)) shown.push(face)
  }
  const hasDepth = placed.some(feature => isFlat(feature) && hasOwnDepth(feature))
  if (hasDepth && !shown.some(face => alongThickness.includes(face))) shown.push(faceEdge)
  return [...shown, ...edgesCutInto(drawn, cutInto)]
}

function edgesCutInto({ edges }: Solid, cutInto: ReadonlySet<FaceName>): readonly FaceName[] {
  return edges.map(({ id }) => id).filter(id => cutInto.has(id))
}

/** Whether the front shows all there is to see of a cut, whichever side it is made from. */
function seenOnFront(feature: Placed): boolean {
  return feature.face === 'front' || (feature.face === 'back' && goesThrough(feature))
}

function isFlat({ face }: Placed): boolean {
  return face === 'front' || face === 'back'
}

/** Whether a cut stops in the wood, or leans; an engraving is no deeper than it shows. */
function hasOwnDepth(feature: Placed): boolean {
  const { kind } = feature.shape
  return kind !== 'engraved-lines' && kind !== 'engraved-text' && !goesThrough(feature)
}

/** Whether a cut is the same all the way through the wood. */
export function goesThrough({ shape }: Placed): boolean {
  switch (shape.kind) {
    case 'bore':
      return shape.depth === 'through' && isPlain(shape)
    case 'pocket':
      return shape.depth === 'through'
    case 'cut-out':
    case 'edge-cut':
      return true
    default:
      return false
  }
}
