import type { Side } from '../finding/side.ts'
import type { Source } from '../finding/source.ts'
import type { Region } from '../geometry/shape/contour.ts'
import type { Feature, Missing } from './feature.ts'
import type { Pose } from './pose.ts'
import type { Size } from './size.ts'

/** One of the six faces of the wood, before anything is cut out of it. */
export type Face = { readonly id: Side; readonly pose: Pose; readonly region: Region }

/** The shape of one hand of a part. */
export type Solid = {
  /** The front, corners rounded and chamfered, before notches: x from 0 to the length, y from 0 to the width. */
  readonly outline: Region
  readonly faces: Readonly<Record<Side, Face>>
  readonly features: readonly Feature[]
}

export type Part = {
  readonly id: string
  readonly label: string
  readonly length: Size
  readonly width: Size
  readonly thickness: Size
  /** The stock it is cut from, where the plan says. */
  readonly stock?: string
  readonly wood?: string
  readonly note?: string
  readonly faceEdge: 'top' | 'bottom'
  readonly referenceEnd: 'left' | 'right'
  /** What the drawing does not give of the outline. */
  readonly missing: readonly Missing[]
  /** As the plan draws it. */
  readonly drawn: Solid
  readonly pieces: readonly Piece[]
  readonly source: Source
}

/** One piece of wood to make: "side-frame/2". In a mirrored piece every side keeps its name; the end called left lies at the right. */
export type Piece = {
  readonly id: string
  readonly number: number
  readonly hand: 'drawn' | 'mirrored'
  readonly solid: Solid
}

/** A part of which the drawing does not give the size, so that nothing of it can be drawn. */
export type Undrawn = {
  readonly id: string
  readonly label: string
  readonly missing: readonly Missing[]
  readonly source: Source
}

export type Model = {
  readonly title: string
  readonly file: string
  readonly units: 'inch' | 'mm'
  /** The step that sizes are shown in, in millimetres. */
  readonly precision: number
  readonly parts: readonly Part[]
  readonly undrawn: readonly Undrawn[]
}
