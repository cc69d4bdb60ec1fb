import type { Unit } from '../length/unit.ts'

/**
 * What the maker's own shop is like. Lengths are in millimetres, angles in radians, times in minutes. Every figure
 * is a default that a workshop file can change.
 */
export type Workshop = {
  readonly bits: Bits
  /** Diameters of the holes in the circle templates, with which corners are drawn on the wood. */
  readonly circleTemplates: SizeSets
  readonly kerf: {
    /** Of the circular saw that boards are cut up with. */
    readonly circular: number
    /** Of the band saw. */
    readonly band: number
  }
  /** How much a blank is larger than what is cut from it, in total. */
  readonly blank: { readonly length: number; readonly width: number }
  readonly sanding: Sanding
  readonly fits: Fits
  readonly clear: ClearWood
  /** The least wood between a slot or a cut-out and whatever lies beside it. */
  readonly wall: number
  readonly neck: Neck
  /** A piece whose longest side is shorter is not cut off at the saw by itself. */
  readonly smallestPiece: number
  readonly glue: Glue
  readonly printer: Printer
}

/** Sizes that a shop has, those it has in inches and those in millimetres; each ascending, both in millimetres. */
export type SizeSets = Readonly<Record<Unit, readonly number[]>>

/** The diameters to be had, and what the bits end in. */
export type Bits = SizeSets & BitTip

export type BitTip = {
  readonly point: BitPoint
  /** Between the cutting edges of a twist drill. */
  readonly pointAngle: number
  /** How far the spur of a brad point stands out. */
  readonly spur: number
}

export const bitPoints = ['twist', 'brad', 'flat'] as const
export type BitPoint = (typeof bitPoints)[number]

/** How far outside the cut line the paper is cut off, and the wood left for the sander to take. */
export type Sanding = {
  /** For a part whose longest side is shorter than `smallBelow`. */
  readonly small: number
  readonly large: number
  readonly smallBelow: number
}

/** How much wider a hole is than the pin in it, and a slot than the tongue. */
export type Fits = {
  /** `small` for pins up to `smallUpTo`. */
  readonly turning: { readonly small: number; readonly large: number; readonly smallUpTo: number }
  readonly push: number
  readonly easy: number
  readonly glue: number
  /** A slot made by machine is wider than its tongue by this much in all. */
  readonly machinedSlot: number
  /** What a dowel glued at both ends has to spare in depth, in all. */
  readonly dowelSpare: number
}

/** The wood that has to be left beside and under a hole. */
export type ClearWood = {
  /** Beside the rim, as so many diameters of the hole. */
  readonly diameters: number
  /** And never less than this. */
  readonly least: number
  /** Nor more: a wide hole is bored with a bit whose rim cuts, and does not break out as a thin one does. */
  readonly most: number
  /** The share of it below which the wood breaks out. */
  readonly breaksBelow: number
  /** Under the point of the bit. */
  readonly underPoint: number
}

/** The least width of a neck: where the grain runs through it, and where it runs across it, which is short grain. */
export type Neck = { readonly along: number; readonly across: number }

/** Times of the glue that is used, in minutes. */
export type Glue = {
  readonly open: number
  readonly clamps: number
  readonly machining: number
  readonly full: number
}

export type Printer = {
  /** The edges that the printer cannot reach. */
  readonly margin: {
    readonly left: number
    readonly right: number
    readonly top: number
    readonly bottom: number
  }
}
