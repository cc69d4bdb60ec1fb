import type { Side } from '../finding/side.ts'
import type { Source } from '../finding/source.ts'
import type { Region } from '../geometry/shape/contour.ts'
import type { Point } from '../geometry/shape/point.ts'
import type { Size } from './size.ts'

/** How deep a cut goes: all the way, or so far (for a bore to its full diameter). */
export type Depth = 'through' | Size

/** A round hole, square to its face; `centre` is on the face. */
export type Bore = {
  readonly kind: 'bore'
  readonly centre: Point
  readonly diameter: Size
  readonly depth: Depth
}

/** A slot or mortise: what is taken away, as seen on the face, and how deep. */
export type Pocket = {
  readonly kind: 'pocket'
  readonly region: Region
  readonly along: Size
  readonly across: Size
  readonly ends: 'square' | 'round'
  readonly depth: Depth
}

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
  | { readonly kind: 'distance'; readonly between: readonly [Side, Side] }
  /** A size that the drawing does not give. */
  | { readonly kind: 'size'; readonly name: string }

/** A feature of which the plan does not say enough. It stops nothing: it is carried along and listed. */
export type Unplaced = {
  readonly kind: 'unplaced'
  readonly what: 'hole' | 'row' | 'slot' | 'notch'
  readonly missing: readonly Missing[]
}

/** A hole's place in the row it belongs to; counted from 1. */
export type RowPlace = { readonly row: string; readonly number: number; readonly count: number }

export type Feature = {
  /** As in the plan; in a row, the row's name and the number: "rail-posts.3". */
  readonly id: string
  /** The face that the tool enters by. */
  readonly face: Side
  readonly shape: Bore | Pocket | EdgeCut | Unplaced
  readonly row?: RowPlace
  readonly source: Source
}

/** A feature that has its place: everything but what is unplaced. */
export type Placed = Feature & { readonly shape: Bore | Pocket | EdgeCut }

export function isPlaced(feature: Feature): feature is Placed {
  return feature.shape.kind !== 'unplaced'
}
