import type { Quantity } from './quantity.ts'

/**
 * What a check of the model can find. Part, feature and side stand in the finding's first place, another cut or part
 * that it is about in the next. `what` is a hole, row, grid, slot, notch or cut-out, or "part".
 */
export type CheckFacts = MissingFacts &
  OutlineFacts &
  WoodFacts &
  InsideFacts &
  RowFacts &
  ShopFacts &
  JointFacts &
  NameFacts

/** What the drawing leaves out. */
export type MissingFacts = {
  /** `wanted` is "left or right, and one from bottom or top". */
  'position-missing': { readonly what: string; readonly wanted: string }
  /** `wanted` is the size's name: "radius of the top-left corner". */
  'radius-missing': { readonly what: string; readonly wanted: string }
  'diameter-missing': { readonly what: string; readonly wanted: string }
  'size-missing': { readonly what: string; readonly wanted: string }
  /** A size taken off the paper drawing. `measured` is the size. */
  'scaled-size': { readonly written: string; readonly confirm: string }
}

/** What is wrong with an outline; `edges` names them, `what` is "part" or "cut-out". */
export type OutlineFacts = {
  'outline-open': { readonly what: string; readonly edges: string }
  'outline-crossing': OutlineMeeting
  'outline-doubled': OutlineMeeting
  'outline-no-length': { readonly what: string; readonly edges: string }
  /** The outline and the size beside it. `direction` is length or width. */
  'size-differs': { readonly direction: string; readonly stated: Quantity; readonly drawn: Quantity }
  /** Two ends and an angle that are not of one taper. */
  'taper-disagrees': {
    readonly drawnAngle: Quantity
    readonly statedAngle: Quantity
    readonly widthByAngle: Quantity
  }
}

type OutlineMeeting = {
  readonly what: string
  readonly edges: string
  /** Where, from the left end and the bottom edge. */
  readonly left?: Quantity
  readonly bottom?: Quantity
}

/** What wood is too little of. `measured` is what is there, `limit` what is wanted. */
export type WoodFacts = {
  /** `beyond` is the edge or corner that it passes; how far is `measured`. */
  'outside-part': { readonly what: string; readonly beyond: string }
  /**
   * `other` is the second cut's kind; `how` they meet, easings from front and back in the thickness; how far they overlap is
   * `measured`. `count` cuts run into one
   * another, whose `names` are these; the two are the worst of them.
   */
  'features-meet': {
    readonly what: string
    readonly other: string
    readonly how: 'overlaps' | 'touches' | 'lies within' | 'meets'
    readonly count: Quantity
    readonly names: string
  }
  /** `edge` is the nearest; `count` are the holes of the row that are as near. */
  'hole-near-edge': { readonly what: string; readonly edge: string; readonly count: Quantity }
  /** `other` is a cut's kind, or "edge". */
  'wall-too-thin': { readonly what: string; readonly other: string; readonly count: Quantity }
  /** `grain` runs through the neck, across it, or at a slant. */
  'neck-too-narrow': {
    readonly grain: 'along' | 'across' | 'aslant'
    /** The middle of the neck, from the left end and the bottom edge. */
    readonly left: Quantity
    readonly bottom: Quantity
  }
  /** What is left under the cut is `measured`; `point` is how far the bit's point stands out. */
  'too-deep': {
    readonly what: string
    readonly depth: Quantity
    readonly available: Quantity
    readonly point: Quantity
  }
  /** The hole for the saw's blade. */
  'entry-hole': { readonly diameter?: Quantity }
}

/** Where in the wood: how far from the reference end, the face edge and the front. */
export type DepthPlace = {
  readonly end: string
  readonly fromEnd: Quantity
  readonly edge: string
  readonly fromEdge: Quantity
  readonly fromFront: Quantity
}

/** What happens inside the wood, between cuts of whatever faces. `count` are the places that are alike. */
export type InsideFacts = {
  /** `other` is the second cut's kind; how far the one has to move to be clear of the other is `measured`. */
  'holes-meet-inside': DepthPlace & { readonly count: Quantity }
  /** `what` is a cut's kind; `other` is one too, or the name of what bounds the wood; `between`: how it lies between the two. */
  'wall-inside': DepthPlace & {
    readonly what: string
    readonly other: string
    readonly between: 'beside' | 'crosswise' | 'before'
    readonly count: Quantity
  }
  /** `what` and `other` are the kinds of the two cuts; how far the one has to move to be clear of the other is `measured`. */
  'cuts-meet-inside': DepthPlace & { readonly what: string; readonly other: string; readonly count: Quantity }
  /** `into` is a cut's kind, or the name of what bounds the wood; `rim`: whether all of the hole's rim comes out there. */
  'hole-comes-out': DepthPlace & {
    readonly into: string
    readonly rim: 'whole' | 'part'
    readonly count: Quantity
  }
  /** A hole that goes through comes out on a cut of the face across from it; `other` is that cut's kind. */
  'exit-on-feature': DepthPlace & { readonly other: string; readonly face: string; readonly count: Quantity }
  /** `why`: there is no wood below, it begins so much deeper (`measured`), or the part's own wood is in the way. */
  'out-of-reach': {
    readonly what: string
    readonly why: 'no-wood' | 'deeper' | 'in-the-way'
    readonly face: string
    readonly count: Quantity
  }
}

/** Rows of holes. */
export type RowFacts = {
  /** `count` of `of` holes stick out, the farthest by `measured`. */
  'row-off-part': {
    readonly what: string
    readonly count: Quantity
    readonly of: Quantity
    readonly beyond: string
  }
  /** The two ends of the row differ by `measured`; with `even` for a spacing they would not. */
  'row-uneven': {
    readonly first: Quantity
    readonly last: Quantity
    readonly spacing: Quantity
    readonly even: Quantity
  }
}

/** What the shop has not got or cannot do. */
export type ShopFacts = {
  /** `measured` is the hole, `nearest` the bit. */
  'bit-missing': { readonly what: string; readonly nearest?: Quantity; readonly difference?: Quantity }
  'template-missing': {
    readonly corners: string
    readonly nearest: Quantity
    readonly difference: Quantity
  }
  /** `direction` is length, width or thickness; `boards` are as many as make up the thickness. */
  'larger-than-stock': { readonly direction: string; readonly stock: string; readonly boards?: Quantity }
  /** The block is `measured`, the part `limit`, and so much may be between them; `direction` is length, width or thickness. */
  'measured-differs': {
    readonly direction: string
    readonly difference: Quantity
    readonly allowed: Quantity
  }
  /** The smallest is `measured` at its longest; `parts` names them. */
  'small-piece': { readonly parts: string; readonly count: Quantity }
}

/** How parts go together. */
export type JointFacts = {
  /** `fault`: the pin does not go in, sits loosely, or is another one than the hole was planned for. */
  'pin-hole-width': {
    readonly pin: string
    readonly fault: 'tight' | 'loose' | 'other-pin'
    readonly other?: string
  }
  /** All the holes together are `measured` deep; `length` is the pin's. */
  'pin-hole-depth': {
    readonly pin: string
    readonly fault: 'shallow' | 'deep' | 'short-pin'
    readonly length: Quantity
  }
  /** Two holes are `one` apart in one part and `another` in the other; the pins give way by `limit`. */
  /** How far the hole and the hole `from` are apart, and those that they are pinned to. */
  'pin-holes-apart': {
    readonly pin: string
    readonly from: string
    readonly one: Quantity
    readonly another: Quantity
  }
  'pin-hole-count': { readonly pin: string; readonly count: Quantity; readonly other: Quantity }
  /** The slot is `measured` wide, the tongue `limit`; `direction` is the tongue's thickness, width or length. */
  'tongue-fit': {
    readonly tongue: string
    readonly direction: string
    readonly fault: 'tight' | 'close' | 'loose'
    readonly room: Quantity
  }
  'joined-twice': Record<string, never>
}

export type NameFacts = {
  /** `kind` is let, stock or pin. */
  'name-unused': { readonly kind: string; readonly name: string }
  'label-twice': { readonly label: string }
}
