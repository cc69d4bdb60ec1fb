import type { Place } from '../../finding/finding.ts'
import type { Source } from '../../finding/source.ts'
import { evaluate, evaluateAngle } from '../../length/evaluate.ts'
import type { LengthFault } from '../../length/fault.ts'
import type { Scope } from '../../length/scope.ts'
import type { WrittenSize } from '../../length/written-size.ts'
import type { WrittenAngle, WrittenLength } from '../../plan/plan.ts'
import type { Depth } from '../feature.ts'
import type { Size } from '../size.ts'
import type { Context } from './context.ts'
import type { Resolved } from './cut-builder.ts'

/** The largest thing that is drawn, in millimetres: no shop has a longer board, and no packet that many pages. */
export const largestSize = 10_000

/** A distance: any length, zero and negative ones too. */
export function resolveDistance(context: Context, written: WrittenLength): Resolved {
  const calculated = evaluate(
    asConfirmed(context, written.size),
    noting(context, written.source),
    context.unit,
  )
  if (!calculated.ok) {
    reportFault(context, calculated.fault, written.source)
    return undefined
  }
  if (calculated.value.kind === 'unknown') return 'unknown'
  const { mm, basis } = calculated.value
  const size: Size = { mm, basis, written: written.size.written, source: written.source }
  if (basis === 'scaled') noteScaled(context, size, written.size)
  if (Math.abs(mm) <= largestSize) return size
  context.report({
    rule: 'size-too-large',
    severity: 'error',
    places: [{ source: written.source }],
    facts: { what: 'the size', size: { value: mm, unit: 'mm' }, largest: { value: largestSize, unit: 'mm' } },
  })
  return undefined
}

/** The context in which every size that is resolved counts as a distance along one axis of a face. */
export function measuredAlong(context: Context, axis: 'x' | 'y'): Context {
  return { ...context, noteScaled: scaled => context.noteScaled({ ...scaled, axis }) }
}

/** A size of something: more than nothing. `what` names it for the maker: "the diameter". */
export function resolvePositive(context: Context, written: WrittenLength, what: string): Resolved {
  const size = resolveDistance(context, written)
  if (size === undefined || size === 'unknown' || size.mm > 0) return size
  context.report({
    rule: 'size-not-positive',
    severity: 'error',
    places: [{ source: written.source }],
    facts: { what, size: { value: size.mm, unit: 'mm' } },
  })
  return undefined
}

/** An angle in radians, positive anticlockwise. */
export function resolveAngle(context: Context, written: WrittenAngle): number | 'unknown' | undefined {
  const size = asConfirmed(context, written.size)
  const calculated = evaluateAngle(size, noting(context, written.source), context.unit)
  if (calculated.ok) return calculated.value.kind === 'unknown' ? 'unknown' : calculated.value.radians
  reportFault(context, calculated.fault, written.source)
  return undefined
}

/** A depth that is left out goes through. */
export function resolveDepth(
  context: Context,
  written: WrittenLength | undefined,
): Depth | 'unknown' | undefined {
  return written === undefined ? 'through' : resolvePositive(context, written, 'the depth')
}

/** A `~` that has been confirmed counts for nothing; what a name in the formula brings along is another matter. */
function asConfirmed({ confirmed }: Context, size: WrittenSize): WrittenSize {
  return confirmed && size.kind === 'size' ? { ...size, scaled: false } : size
}

export function noteScaled(
  context: Pick<Context, 'noteScaled' | 'place'>,
  size: Size,
  written: WrittenSize,
): void {
  const origin = written.kind === 'size' && written.scaled ? 'measured' : 'calculated'
  context.noteScaled({ size, place: { ...context.place, source: size.source }, origin })
}

/** The scope that also notes down which names are used, and where. */
export function noting({ scope, noteUse }: Pick<Context, 'scope' | 'noteUse'>, at: Source): Scope {
  return {
    get: name => {
      noteUse('let', name, at)
      return scope.get(name)
    },
    keys: () => scope.keys(),
  }
}

/** A fault in a formula, at the characters that it speaks of. */
export function reportFault(
  context: Pick<Context, 'report'>,
  fault: LengthFault,
  source: Source,
  place: Place = {},
): void {
  context.report({
    rule: 'size-formula',
    severity: 'error',
    places: [{ ...place, source: { ...source, from: source.from + fault.from, to: source.from + fault.to } }],
    facts: {
      found: fault.found,
      wanted: fault.wanted,
      ...(fault.nearest === undefined ? {} : { nearest: fault.nearest }),
    },
  })
}
