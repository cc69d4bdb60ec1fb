import type { Side } from '../finding/side.ts'
import type { Source } from '../finding/source.ts'
import type { Located, WrittenAngle, WrittenLength } from '../yaml/written.ts'
import type { CornersPlan } from './corner-plan.ts'
import type { CutPlan } from './cut-plan.ts'
import type { OutlinePlan } from './outline-plan.ts'

export type PartPlan = {
  readonly id: Located<string>
  readonly label?: Located<string>
  readonly note?: Located<string>
  /** The page of the paper drawing that shows it. */
  readonly page?: Located<string>
  /** How many pieces are wanted, 1 unless said. */
  readonly make: Located<number>
  /** An even number of pieces, the first half as drawn and the second half mirrored left for right. */
  readonly mirrored: boolean
  /** The stock it is cut from. */
  readonly from?: Located<string>
  readonly shape: ShapePlan
  /** Left out: that of the stock. */
  readonly thickness?: WrittenLength
  readonly faceEdge: Located<'top' | 'bottom'>
  readonly referenceEnd: Located<'left' | 'right'>
  /** The maker's own words for sides. */
  readonly sides: { readonly [S in Side]?: Located<string> }
  /** How far inside the part's edge its template is cut, where it is to guide the bush of a router. */
  readonly offset?: WrittenLength
  /** How the shape comes from paper to wood; left out: as the plan says for all parts. */
  readonly transfer?: Located<TransferName>
  /** The paper for holes on several faces. */
  readonly wrap?: Located<'panels' | 'net'>
  /** Length, width and thickness of the block as the maker has measured it. */
  readonly measured?: readonly [WrittenLength, WrittenLength, WrittenLength]
  readonly cuts: readonly CutPlan[]
  readonly source: Source
}

/** A sheet to glue on, lines marked on the wood, or whichever suits the part. */
export const transferNames = ['template', 'mark-out', 'auto'] as const
export type TransferName = (typeof transferNames)[number]

/** What bounds the face side of a part. */
export type ShapePlan = RectanglePlan | OutlineShapePlan | TaperPlan | DiscPlan

export type RectanglePlan = {
  readonly kind: 'rectangle'
  readonly size: PartSize
  readonly corners: CornersPlan
  /** Ends that are half circles, in place of their two corners. */
  readonly roundEnds: readonly Located<'left' | 'right'>[]
}

/** Any outline. With a size its points may be measured from every side; without, the size is the outline's own. */
export type OutlineShapePlan = {
  readonly kind: 'outline'
  readonly outline: OutlinePlan
  readonly size?: PartSize
}

/**
 * Straight ends square to the edge named, wider at one of them: by the widths of both ends, or by one width and the
 * angle between the sloping edge and the length, by which the part narrows away from that end.
 */
export type TaperPlan = {
  readonly kind: 'taper'
  readonly length: WrittenLength
  readonly left?: WrittenLength
  readonly right?: WrittenLength
  readonly angle?: WrittenAngle
  /** The edge that is square to the ends; with neither, both slope alike. */
  readonly straight: Located<'bottom' | 'top' | 'neither'>
  readonly source: Source
}

/** A disc, or a ring where something is taken out of the inside. */
export type DiscPlan = {
  readonly kind: 'disc'
  readonly diameter: WrittenLength
  readonly inside?: WrittenLength
  readonly source: Source
}

/** Length x width. */
export type PartSize = {
  readonly length: WrittenLength
  readonly width: WrittenLength
  readonly source: Source
}
