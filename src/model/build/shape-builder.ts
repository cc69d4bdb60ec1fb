import type { Region } from '../../geometry/shape/contour.ts'
import type { ShapePlan } from '../../plan/plan.ts'
import type { Missing } from '../feature.ts'
import type { Part } from '../part.ts'
import type { MadeCorner, OutlineFault, SizeDiffers, TaperFacts } from '../shape-facts.ts'
import type { Size } from '../size.ts'
import type { Context } from './context.ts'
import type { FaceFrame } from './face-frame.ts'

/** What bounds the face side, its left end at x = 0 and its bottom edge at y = 0. */
export type Shape = {
  readonly kind: Part['shape']
  readonly outline: Region
  readonly length: Size
  readonly width: Size
  /** The straight edges that have names, once the thickness is known. */
  readonly edges: readonly NamedEdge[]
  readonly corners: readonly MadeCorner[]
  readonly unknownCorners: readonly string[]
  readonly missing: readonly Missing[]
  readonly sizeDiffers: readonly SizeDiffers[]
  readonly taper?: TaperFacts
}

/** A straight edge: its face, and from where to where of it there is wood when its corners are made. */
export type NamedEdge = {
  readonly frame: (thickness: number) => FaceFrame
  readonly from: number
  readonly to: number
}

/** What cannot be drawn, and why. */
export type NoShape = { readonly missing: readonly Missing[]; readonly faults: readonly OutlineFault[] }

/** Nothing comes of it where a fault of the plan has been reported. */
export type ShapeBuilder<K extends ShapePlan['kind']> = (
  context: Context,
  plan: Extract<ShapePlan, { kind: K }>,
) => Shape | NoShape | undefined
