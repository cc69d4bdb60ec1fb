import type { DistanceFrom, FaceName } from '../finding/face-name.ts'
import type { Side } from '../finding/side.ts'
import type { Source } from '../finding/source.ts'
import type { Region } from '../geometry/shape/contour.ts'
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
  readonly what: CutPlan['kind']
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

export type Feature = {
  /** As in the plan; in a row, the row's name and the number: "rail-posts.3". On several faces: "peg.front". */
  readonly id: string
  /** The name alone, which all the features of one cut share. */
  readonly cut: string
  /** The face that the tool enters by. */
  readonly face: FaceName
  readonly shape: Bore | Pocket | CutOut | EdgeCut | Unplaced
  readonly row?: RowPlace
  readonly label?: string
  readonly note?: string
  /** The page of the paper drawing. */
  readonly page?: string
  readonly source: Source
}

/** A feature that has its place: everything but what is unplaced. */
export type Placed = Feature & { readonly shape: Exclude<Feature['shape'], Unplaced> }

export function isPlaced(feature: Feature): feature is Placed {
  return feature.shape.kind !== 'unplaced'
}
