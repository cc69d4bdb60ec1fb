import type { Source } from '../../finding/source.ts'
import type { Region } from '../../geometry/shape/contour.ts'
import { type Corner, rectangleWithCorners } from '../../geometry/shape/rectangle.ts'
import { type CornersPlan, cornerNames, type PartPlan } from '../../plan/plan.ts'
import type { Extent } from '../box-faces.ts'
import type { Missing } from '../feature.ts'
import type { Context } from './context.ts'
import { resolvePositive } from './resolve-size.ts'

/** The front of a part with its corners made; a corner whose size the drawing does not give stays square and is listed. */
export function buildOutline(
  context: Context,
  part: PartPlan,
  extent: Extent,
): { readonly outline: Region; readonly missing: readonly Missing[] } | undefined {
  const resolved = resolveCorners(context, part.corners)
  if (resolved === undefined) return undefined
  const bounds = { left: 0, bottom: 0, right: extent.length, top: extent.width }
  const made = rectangleWithCorners(bounds, resolved.corners)
  if (made.ok) return { outline: made.value, missing: resolved.missing }

  const { side, length, wanted } = made.fault.facts
  context.report({
    rule: 'corners-too-large',
    severity: 'error',
    places: sourcesAlong(part.corners, String(side)).map(source => ({ source, part: part.id.value })),
    facts: {
      edge: String(side),
      corners: { value: Number(wanted), unit: 'mm' },
      available: { value: Number(length), unit: 'mm' },
    },
  })
  return undefined
}

/** Where the sizes of the two corners of a side stand; one place where one size stands for both. */
function sourcesAlong(corners: CornersPlan, side: string): readonly Source[] {
  const sources = cornerNames
    .filter(name => name.includes(side))
    .flatMap(name => corners[name]?.length.source ?? [])
  return sources.filter((source, i) => sources.findIndex(s => s.from === source.from) === i)
}

function resolveCorners(context: Context, plan: CornersPlan) {
  const corners: { [name: string]: Corner } = {}
  const missing: Missing[] = []
  for (const name of cornerNames) {
    const corner = plan[name]
    if (corner === undefined) continue
    const word = corner.kind === 'round' ? 'radius' : 'chamfer'
    const size = resolvePositive(context, corner.length, `the ${word}`)
    if (size === undefined) return undefined
    if (size === 'unknown') missing.push({ kind: 'size', name: `${word} of the ${name} corner` })
    else corners[name] = corner.kind === 'round' ? { radius: size.mm } : { chamfer: size.mm }
  }
  return { corners, missing }
}
