import type { DistanceFrom, FaceName } from '../finding/face-name.ts'
import type { Side } from '../finding/side.ts'
import type { Source } from '../finding/source.ts'
import type { Contour, Region } from '../geometry/shape/contour.ts'
import type { Point } from '../geometry/shape/point.ts'
import type { CutPlan } from '../plan/cut-plan.ts'
import type { FitName } from '../plan/fit-plan.ts'
import type { BitPoint } from '../workshop/workshop.ts'
import type { OutlineFault } from './shape-facts.ts'
import type { Size } from './size.ts'

/** How deep a cut goes: all the way, or so far (for a bore to its full diameter). */
export type Depth = 'through' | Size

/** A round hole; `centre` is on the face, and its axis is square to the face unless it leans. */
export type Bore = {
  readonly kind: 'bore'
  readonly centre: Point
  readonly diameter: Size
  /** Along the axis. */
  readonly depth: Depth
  readonly lean?: Lean
  readonly mouth?: Mouth
  /** What the bit ends in, where the plan says; else as the shop's bits do. */
  readonly tip?: Tip
  /** The pin that goes in, where the plan asks for the hole by its pin. */
  readonly for?: BoredFor
}

/** How a bore leans out of the square. */
export type Lean = {
  /**
   * The sight line: the direction on the face that a rod standing in the hole leans to, in radians, positive
   * anticlockwise from the face's own x as it is seen from outside.
   */
  readonly toward: number
  /** Between the axis and the square to the face, in radians, above 0 and less than a right angle. */
  readonly angle: number
  /** As the plan writes it: one lean, or two of which this is the resultant; angles in radians. */
  readonly given: readonly { readonly toward: DistanceFrom; readonly angle: number }[]
}

/** What widens a hole where it enters, square to the bore's axis and about it. */
export type Mouth =
  | { readonly kind: 'counterbore'; readonly diameter: Size; readonly depth: Size }
  /** `angle` is the whole angle of the cone, in radians. */
  | { readonly kind: 'countersink'; readonly diameter: Size; readonly angle: number }

/** The end of a bit; `angle` is that between the cutting edges of a twist drill, in radians. */
export type Tip = { readonly point: BitPoint; readonly angle?: number }

/** The diameter that a pin and its fit ask for, in millimetres, before it is taken up to a bit of the shop. */
export type BoredFor = {
  readonly pin: string
  readonly fit: FitName | 'clearance'
  readonly wanted: number
}

/** A slot or mortise: what is taken away, as seen on the face, and how deep. */
export type Pocket = {
  readonly kind: 'pocket'
  readonly region: Region
  readonly along: Size
  readonly across: Size
  readonly ends: 'square' | 'round'
  /** How far it is turned about its middle, in radians. */
  readonly angle: number
  readonly depth: Depth
}

/** A piece sawn out of the inside, through the thickness, as seen on the face. */
export type CutOut = {
  readonly kind: 'cut-out'
  readonly region: Region
  /** Where the saw's blade goes in; none where no hole of the shop's bits fits into the waste. */
  readonly entry?: EntryHole
}

/** `given`: the plan says where, or how wide. */
export type EntryHole = { readonly centre: Point; readonly diameter: number; readonly given: boolean }

/** A notch: what is taken away from an edge or end, as seen on the front, through the thickness. */
export type EdgeCut = {
  readonly kind: 'edge-cut'
  readonly edge: Side
  readonly region: Region
  readonly along: Size
  readonly into: Size
}

/** A channel with a flat floor, as seen on the face: two straight sides, and ends where it stops. */
export type Groove = {
  readonly kind: 'groove'
  readonly region: Region
  /** Which way of the face it runs: along its own x or its own y. */
  readonly runs: 'x' | 'y'
  readonly width: Size
  readonly depth: Size
  /** Whether it stops short of an end. */
  readonly stopped: boolean
}

/**
 * What is worked along an arris: the strip of the front or back, whichever is the feature's face, beside the end or
 * edge that it meets there. The line where the strip begins is tagged {@link lineOfStrip}.
 */
type AlongArris = { readonly edge: FaceName; readonly region: Region }

/** The same, where `all` is the whole rim of the face, or the rim of what is open in it. */
type AlongRim = { readonly edge: FaceName | 'all'; readonly region: Region }

/** A step along an arris, so wide on the face and so deep into it. */
export type Rebate = AlongArris & {
  readonly kind: 'rebate'
  readonly width: Size
  readonly depth: Size
  readonly stopped: boolean
}

/**
 * An end or edge that is out of square: the strip that the feature's face loses, right through the thickness to
 * nothing on the opposite face.
 */
export type Bevel = AlongArris & {
  readonly kind: 'bevel'
  /** From square, in radians. */
  readonly angle: number
  /** How much shorter the feature's face is than the opposite one: thickness × tan(angle). */
  readonly shorter: Size
}

/** An arris cut off aslant, so wide on the face and so deep down the edge. */
export type Chamfer = AlongRim & {
  readonly kind: 'chamfer'
  readonly width: Size
  readonly depth: Size
}

/** An arris rounded by a quarter circle. */
export type RoundOver = AlongRim & { readonly kind: 'round-over'; readonly radius: Size }

/** Lines worked into a face, as seen on it. */
export type EngravedLines = {
  readonly kind: 'engraved-lines'
  readonly paths: readonly Contour[]
  /** Absent: as deep as shows. */
  readonly depth?: Size
}

/** A text worked into a face. It reads from left to right on both hands of a part. */
export type EngravedText = {
  readonly kind: 'engraved-text'
  readonly text: string
  /** Of a capital letter. */
  readonly height: Size
  /** On the base line, at the point of it that `align` names. */
  readonly at: Point
  readonly align: 'start' | 'middle' | 'end'
  /** Absent: as deep as shows. */
  readonly depth?: Size
}

/** What a feature lacks before it can be put on the wood. */
export type Missing =
  /** No distance in the direction between these two sides of its face. */
  | { readonly kind: 'distance'; readonly between: readonly [DistanceFrom, DistanceFrom] }
  /** A size that the drawing does not give. */
  | { readonly kind: 'size'; readonly name: string }
  /** The place of the cut, or the radius of the corner, that it is placed from. */
  | { readonly kind: 'place-of'; readonly cut: string }
  /** The outline of a cut-out is none. */
  | { readonly kind: 'outline'; readonly faults: readonly OutlineFault[] }

/** A feature of which the plan does not say enough. It stops nothing: it is carried along and listed. */
export type Unplaced = {
  readonly kind: 'unplaced'
  /** What a maker calls it. */
  readonly what: Exclude<CutPlan['kind'], 'engrave'> | 'engraving'
  readonly missing: readonly Missing[]
}

/** A hole's place among those bored together: of a row, a grid or a circle of holes; counted from 1. */
export type RowPlace = {
  readonly row: string
  readonly pattern: 'row' | 'grid' | 'circle'
  readonly number: number
  readonly count: number
  /** Of a grid, the line along the face that it stands in, counted from 1. */
  readonly line?: number
}

/** Everything that can be cut into the wood. */
export type Shape =
  | Bore
  | Pocket
  | CutOut
  | EdgeCut
  | Groove
  | Rebate
  | Bevel
  | Chamfer
  | RoundOver
  | EngravedLines
  | EngravedText

export type Feature = {
  /** As in the plan; in a row, the row's name and the number: "rail-posts.3". On several faces: "peg.front". */
  readonly id: string
  /** The name alone, which all the features of one cut share. */
  readonly cut: string
  /** The face that the tool enters by. */
  readonly face: FaceName
  readonly shape: Shape | Unplaced
  readonly row?: RowPlace
  readonly label?: string
  readonly note?: string
  /** The page of the paper drawing. */
  readonly page?: string
  readonly source: Source
}

/** A feature that has its place: everything but what is unplaced. */
export type Placed = Feature & { readonly shape: Shape }

export function isPlaced(feature: Feature): feature is Placed {
  return feature.shape.kind !== 'unplaced'
}

/** A hole that has its place. */
export type BoreFeature = Placed & { readonly shape: Bore }

export function isBore(feature: Placed): feature is BoreFeature {
  return feature.shape.kind === 'bore'
}

/** Whether a hole is square to its face and as wide all the way down as it is there. */
export function isPlain({ lean, mouth }: Bore): boolean {
  return lean === undefined && mouth === undefined
}
