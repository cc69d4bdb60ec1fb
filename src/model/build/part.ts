import { type Side, sides } from '../../finding/side.ts'
import type { Region } from '../../geometry/shape/contour.ts'
import { mirrorAcross } from '../../geometry/shape/matrix.ts'
import { rectangle } from '../../geometry/shape/rectangle.ts'
import { transformRegion } from '../../geometry/shape/transform.ts'
import { nearestName } from '../../length/nearest-name.ts'
import type { PartPlan } from '../../plan/plan.ts'
import { boxPose, type Extent, faceExtent } from '../box-faces.ts'
import { mirrorSolid } from '../mirror.ts'
import type { Face, Part, Piece, Solid, Undrawn } from '../part.ts'
import type { Context } from './context.ts'
import { buildOutline } from './corners.ts'
import { buildCut } from './cut.ts'
import { isKnown, missingSizes, type Resolved } from './cut-builder.ts'
import { resolvePositive } from './resolve-size.ts'
import { withPartSizes } from './scope.ts'
import type { Stock } from './stock.ts'

/** A part, or what the drawing must give before it can be drawn; nothing where a fault has been reported. */
export function buildPart(
  plan: PartPlan,
  context: Context,
  stock: readonly Stock[],
): Part | Undrawn | undefined {
  const fromStock = findStock(context, plan, stock)
  if (fromStock === 'unknown-stock') return undefined
  const length = resolvePositive(context, plan.size.length, 'the length')
  const width = resolvePositive(context, plan.size.width, 'the width')
  const thickness = resolveThickness(context, plan, fromStock)
  if (length === undefined || width === undefined || thickness === undefined) return undefined
  const label = plan.label?.value ?? labelFromId(plan.id.value)
  if (!isKnown(length) || !isKnown(width) || !isKnown(thickness)) {
    return {
      id: plan.id.value,
      label,
      missing: missingSizes({ length, width, thickness }),
      source: plan.source,
    }
  }

  const extent: Extent = { length: length.mm, width: width.mm, thickness: thickness.mm }
  const inPart = withPartSizes(context, { length, width, thickness })
  const outline = buildOutline(inPart, plan, extent)
  const features = plan.cuts.flatMap(cut => buildCut(inPart, cut, extent))
  if (outline === undefined) return undefined

  const drawn: Solid = { outline: outline.outline, faces: facesOf(extent, outline.outline), features }
  return {
    id: plan.id.value,
    label,
    length,
    width,
    thickness,
    ...(fromStock === undefined ? {} : { stock: fromStock.label }),
    ...(fromStock?.wood === undefined ? {} : { wood: fromStock.wood }),
    ...(plan.note === undefined ? {} : { note: plan.note.value }),
    faceEdge: plan.faceEdge.value,
    referenceEnd: plan.referenceEnd.value,
    missing: outline.missing,
    drawn,
    pieces: buildPieces(plan, drawn, extent),
    source: plan.source,
  }
}

function findStock(
  context: Context,
  plan: PartPlan,
  stock: readonly Stock[],
): Stock | undefined | 'unknown-stock' {
  if (plan.from === undefined) return undefined
  const wanted = plan.from.value
  const found = stock.find(s => s.id === wanted)
  if (found !== undefined) return found
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

function resolveThickness(context: Context, plan: PartPlan, stock: Stock | undefined): Resolved {
  const own = plan.size.thickness
  if (own !== undefined) return resolvePositive(context, own, 'the thickness')
  if (stock !== undefined) return stock.thickness
  context.report({
    rule: 'thickness-missing',
    severity: 'error',
    places: [{ source: plan.size.source, part: plan.id.value }],
    facts: {},
  })
  return undefined
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

/** "side-frame" is shown as "Side frame" where the plan gives no label. */
function labelFromId(id: string): string {
  const words = id.replaceAll('-', ' ')
  return words.charAt(0).toUpperCase() + words.slice(1)
}
