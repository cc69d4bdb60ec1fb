import type { Source } from '../../finding/source.ts'
import type { Bounds, Region } from '../../geometry/shape/contour.ts'
import { type Corner, rectangleWithCorners } from '../../geometry/shape/rectangle.ts'
import { type CornersPlan, cornerNames } from '../../plan/corner-plan.ts'
import type { Missing } from '../feature.ts'
import type { MadeCorner } from '../shape-facts.ts'
import type { Context } from './context.ts'
import { resolvePositive } from './resolve-size.ts'

/** The corners of a rectangle; one whose size the drawing does not give stays square and is listed. */
export type ResolvedCorners = {
  readonly corners: { readonly [name: string]: Corner }
  readonly made: readonly MadeCorner[]
  readonly missing: readonly Missing[]
  readonly unknown: readonly string[]
}

export function resolveCorners(context: Context, plan: CornersPlan): ResolvedCorners | undefined {
  const corners: { [name: string]: Corner } = {}
  const made: MadeCorner[] = []
  const missing: Missing[] = []
  const unknown: string[] = []
  for (const name of cornerNames) {
    const corner = plan[name]
    if (corner === undefined) continue
    const word = corner.kind === 'round' ? 'radius' : 'chamfer'
    const size = resolvePositive(context, corner.length, `the ${word}`)
    if (size === undefined) return undefined
    if (size === 'unknown') {
      missing.push({ kind: 'size', name: `${word} of the ${name} corner` })
      unknown.push(name)
    } else {
      corners[name] = corner.kind === 'round' ? { radius: size.mm } : { chamfer: size.mm }
      made.push({ name, kind: corner.kind, size })
    }
  }
  return { corners, made, missing, unknown }
}

/** A rectangle with its corners made; nothing where they do not fit, which is reported where their sizes stand. */
export function corneredRectangle(
  context: Context,
  bounds: Bounds,
  corners: ResolvedCorners['corners'],
  plan: CornersPlan,
  roundEnds: readonly Source[] = [],
): Region | undefined {
  const made = rectangleWithCorners(bounds, corners)
  if (made.ok) return made.value
  const { side, length, wanted } = made.fault.facts
  context.report({
    rule: 'corners-too-large',
    severity: 'error',
    places: [...sourcesAlong(plan, String(side)), ...roundEnds].map(source => ({ source })),
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
