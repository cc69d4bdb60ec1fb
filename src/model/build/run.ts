import type { DistanceFrom } from '../../finding/face-name.ts'
import type { Source } from '../../finding/source.ts'
import { coincident } from '../../number/tolerance.ts'
import type { GroovePlan } from '../../plan/plan.ts'
import { isKnown } from './cut-builder.ts'
import { resolveDistance, resolvePositive } from './resolve-size.ts'
import type { Site } from './site.ts'

/** Where what runs along a face stops short of its ends: in millimetres from each, absent where it runs out. */
export type Stopped = { readonly first?: number; readonly second?: number }

/** What the drawing does not give of it. */
type Lacking = { readonly missing: 'length' | 'distance from the end' }

/**
 * The stops of a groove or rebate between two sides of its face that are `available` apart, the first of them at the
 * zero of the direction. Nothing where a fault has been reported: nothing would be left to run in.
 */
export function resolveStops(
  site: Site,
  { stopped, length, id }: Pick<GroovePlan, 'stopped' | 'length' | 'id'>,
  [first]: readonly [DistanceFrom, DistanceFrom],
  available: number,
): Stopped | Lacking | undefined {
  const { context } = site
  const sizes = stopped.map(({ side, distance }) => ({ side, size: resolveDistance(context, distance) }))
  const long = length && resolvePositive(context, length, 'the length')
  if (sizes.some(({ size }) => size === undefined) || (length && long === undefined)) return undefined
  if (long === 'unknown') return { missing: 'length' }
  if (sizes.some(({ size }) => size === 'unknown')) return { missing: 'distance from the end' }
  const from = (wanted: boolean): number | undefined =>
    sizes.flatMap(({ side, size }) =>
      (side.value === first) === wanted && isKnown(size) ? [size.mm] : [],
    )[0]
  let [start, end] = [from(true), from(false)]
  if (isKnown(long)) {
    if (start !== undefined) end = available - start - long.mm
    else if (end !== undefined) start = available - end - long.mm
  }
  const left = available - (start ?? 0) - (end ?? 0)
  if (left <= coincident) {
    reportNoRoom(
      site,
      length?.source ?? stopped[0]?.distance.source ?? id.source,
      available - left,
      available,
    )
    return undefined
  }
  return {
    ...(start === undefined ? {} : { first: start }),
    ...(end === undefined ? {} : { second: end }),
  }
}

function reportNoRoom({ context }: Site, source: Source, stops: number, available: number): void {
  context.report({
    rule: 'nothing-to-run-in',
    severity: 'error',
    places: [{ source }],
    facts: { stops: { value: stops, unit: 'mm' }, available: { value: available, unit: 'mm' } },
  })
}
