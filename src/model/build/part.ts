import { type FaceName, isSide } from '../../finding/face-name.ts'
import { type Side, sides } from '../../finding/side.ts'
import type { Region } from '../../geometry/shape/contour.ts'
import { mirrorAcross } from '../../geometry/shape/matrix.ts'
import { rectangle } from '../../geometry/shape/rectangle.ts'
import { transformRegion } from '../../geometry/shape/transform.ts'
import { nearestName } from '../../length/nearest-name.ts'
import type { PartPlan, TransferName } from '../../plan/plan.ts'
import { boxPose, type Extent, faceExtent } from '../box-faces.ts'
import { mirrorSolid } from '../mirror.ts'
import type { Face, Measured, Part, Piece, Solid, Undrawn } from '../part.ts'
import type { Context } from './context.ts'
import { isKnown, missingSizes, type Resolved } from './cut-builder.ts'
import { buildCuts } from './cuts.ts'
import { type FaceFrame, sideFrame } from './face-frame.ts'
import { labelFromId } from './label.ts'
import { resolvePositive } from './resolve-size.ts'
import { withPartSizes } from './scope.ts'
import { buildShape } from './shape.ts'
import type { Shape } from './shape-builder.ts'
import type { ResolvedStock } from './stock.ts'

/** A part, or what keeps it from being drawn; nothing where a fault has been reported. */
export function buildPart(
  plan: PartPlan,
  context: Context,
  stock: readonly ResolvedStock[],
  transfer: TransferName,
): Part | Undrawn | undefined {
  const fromStock = findStock(context, plan, stock)
  if (fromStock === 'unknown-stock') return undefined
  const thickness = resolveThickness(context, plan, fromStock)
  const inThickness = withPartSizes(context, { thickness })
  const shape = buildShape(inThickness, plan.shape)
  const offset = plan.offset && resolvePositive(context, plan.offset, 'the offset')
  const measured = plan.measured && resolveMeasured(context, plan.measured)
  if (thickness === undefined || shape === undefined) return undefined
  if ((plan.offset && offset === undefined) || (plan.measured && measured === undefined)) return undefined
  const label = plan.label?.value ?? labelFromId(plan.id.value)
  const missing = missingSizes({
    thickness,
    offset,
    ...(measured && 'lacks' in measured ? measured.lacks : {}),
  })
  if (!('outline' in shape) || !isKnown(thickness)) {
    const nothing = 'outline' in shape ? { missing: [], faults: [] } : shape
    return {
      id: plan.id.value,
      label,
      missing: [...nothing.missing, ...missing],
      outlineFaults: nothing.faults,
      source: plan.source,
    }
  }

  const { length, width } = shape
  const extent: Extent = { length: length.mm, width: width.mm, thickness: thickness.mm }
  const edges = edgesOf(shape, extent)
  const inPart = withPartSizes(inThickness, { length, width, thickness })
  const features = buildCuts(
    {
      context: inPart,
      extent,
      outline: shape.outline,
      unknownCorners: shape.unknownCorners,
      frame: frameFinder(extent, edges),
      edgeNames: edges.map(({ frame }) => frame.id.slice('edge:'.length)),
    },
    plan,
  )
  const drawn: Solid = {
    outline: shape.outline,
    faces: facesOf(extent, shape.outline),
    edges: edges.map(({ face }) => face),
    features,
  }
  return {
    id: plan.id.value,
    label,
    shape: shape.kind,
    length,
    width,
    thickness,
    ...(fromStock === undefined ? {} : stockOf(fromStock)),
    ...(plan.note === undefined ? {} : { note: plan.note.value }),
    ...(plan.page === undefined ? {} : { page: plan.page.value }),
    faceEdge: plan.faceEdge.value,
    referenceEnd: plan.referenceEnd.value,
    sideNames: sideNamesOf(plan),
    ...(isKnown(offset) ? { templateOffset: offset } : {}),
    transfer: plan.transfer?.value ?? transfer,
    ...(plan.wrap ? { wrap: plan.wrap.value } : {}),
    ...(measured && !('lacks' in measured) ? { measured } : {}),
    missing: [...shape.missing, ...missing],
    corners: shape.corners,
    ...(shape.taper ? { taper: shape.taper } : {}),
    sizeDiffers: shape.sizeDiffers,
    drawn,
    pieces: buildPieces(plan, drawn, extent),
    source: plan.source,
  }
}

function stockOf({ id, label, wood }: ResolvedStock): Pick<Part, 'stock' | 'stockId' | 'wood'> {
  const stock = { stock: label, stockId: id }
  return wood === undefined ? stock : { ...stock, wood }
}

function sideNamesOf({ sides: names }: PartPlan): Part['sideNames'] {
  return Object.fromEntries(
    sides.flatMap(side => {
      const name = names[side]
      return name === undefined ? [] : [[side, name.value]]
    }),
  )
}

function findStock(
  context: Context,
  plan: PartPlan,
  stock: readonly ResolvedStock[],
): ResolvedStock | undefined | 'unknown-stock' {
  if (plan.from === undefined) return undefined
  const wanted = plan.from.value
  const found = stock.find(s => s.id === wanted)
  if (found !== undefined) {
    context.noteUse('stock', wanted, plan.from.source)
    return found
  }
  const names = stock.map(s => s.id)
  const nearest = nearestName(wanted, names)
  context.report({
    rule: 'unknown-stock',
    severity: 'error',
    places: [{ source: plan.from.source, part: plan.id.value }],
    facts: { found: wanted, allowed: names.join(', '), ...(nearest === undefined ? {} : { nearest }) },
  })
  return 'unknown-stock'
}

function resolveThickness(context: Context, plan: PartPlan, stock: ResolvedStock | undefined): Resolved {
  const own = plan.thickness
  if (own !== undefined) return resolvePositive(context, own, 'the thickness')
  if (stock !== undefined) return stock.thickness
  context.report({
    rule: 'thickness-missing',
    severity: 'error',
    places: [
      { source: plan.shape.kind === 'rectangle' ? plan.shape.size.source : plan.source, part: plan.id.value },
    ],
    facts: {},
  })
  return undefined
}

/** What the block measures, or which of it is unknown; nothing where a fault has been reported. */
function resolveMeasured(
  context: Context,
  plan: NonNullable<PartPlan['measured']>,
): Measured | { readonly lacks: Readonly<Record<string, Resolved>> } | undefined {
  const [length, width, thickness] = [
    resolvePositive(context, plan[0], 'the measured length'),
    resolvePositive(context, plan[1], 'the measured width'),
    resolvePositive(context, plan[2], 'the measured thickness'),
  ]
  if (length === undefined || width === undefined || thickness === undefined) return undefined
  if (isKnown(length) && isKnown(width) && isKnown(thickness)) return { length, width, thickness }
  const lacks = { 'measured length': length, 'measured width': width, 'measured thickness': thickness }
  return { lacks }
}

type Edge = { readonly frame: FaceFrame; readonly face: Face }

/** The straight edges with names, each as far as there is wood when its corners are made. */
function edgesOf({ edges }: Shape, { thickness }: Extent): readonly Edge[] {
  return edges.map(({ frame: at, from, to }) => {
    const frame = at(thickness)
    const region = rectangle({ left: from, right: to, bottom: 0, top: thickness })
    return { frame, face: { id: frame.id, pose: frame.pose, region } }
  })
}

function frameFinder(extent: Extent, edges: readonly Edge[]): (face: FaceName) => FaceFrame | undefined {
  const ofSides = new Map(sides.map(side => [side, sideFrame(side, extent)]))
  return face => (isSide(face) ? ofSides.get(face) : edges.find(({ frame }) => frame.id === face)?.frame)
}

/** Front and back are bounded by the outline, the back seen from behind; edges and ends are whole rectangles. */
function facesOf(extent: Extent, outline: Region): Readonly<Record<Side, Face>> {
  const region = (id: Side): Region => {
    if (id === 'front') return outline
    if (id === 'back') return transformRegion(outline, mirrorAcross(extent.length / 2))
    const { right, up } = faceExtent(id, extent)
    return rectangle({ left: 0, bottom: 0, right, top: up })
  }
  const face = (id: Side): Face => ({ id, pose: boxPose(id, extent), region: region(id) })
  return Object.fromEntries(sides.map(id => [id, face(id)])) as Record<Side, Face>
}

/** All as drawn; or, of a mirrored part, the first half as drawn and the second half mirrored. */
function buildPieces(plan: PartPlan, drawn: Solid, extent: Extent): readonly Piece[] {
  const count = plan.make.value
  const mirrored = plan.mirrored ? mirrorSolid(drawn, extent) : undefined
  return Array.from({ length: count }, (_, i): Piece => {
    const base = { id: `${plan.id.value}/${i + 1}`, number: i + 1 }
    if (mirrored !== undefined && i >= count / 2) return { ...base, hand: 'mirrored', solid: mirrored }
    return { ...base, hand: 'drawn', solid: drawn }
  })
}
