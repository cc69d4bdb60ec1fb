import type { Finding, Place } from '../../finding/finding.ts'
import type { Source } from '../../finding/source.ts'
import type { Scope } from '../../length/scope.ts'
import type { Unit } from '../../length/unit.ts'
import type { Workshop } from '../../workshop/workshop.ts'
import type { Pin } from '../joint.ts'
import type { ScaledSize } from '../provenance.ts'

/** What the builders share. Faults, scaled sizes and the use of names are noted down as they are met. */
export type Context = {
  readonly unit: Unit
  readonly workshop: Workshop
  readonly scope: Scope
  readonly pins: ReadonlyMap<string, Pin>
  /** The part and the cut that are being built. */
  readonly place: Place
  /** Whether what is scaled here has been confirmed. */
  readonly confirmed: boolean
  readonly confirms: (name: string, cut?: string) => boolean
  readonly report: (finding: Finding) => void
  readonly noteScaled: (scaled: ScaledSize) => void
  readonly noteUse: (kind: 'let' | 'stock' | 'pin' | 'part', name: string, at: Source) => void
}
