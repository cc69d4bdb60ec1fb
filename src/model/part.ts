import type { FaceName } from '../finding/face-name.ts'
import type { Side } from '../finding/side.ts'
import type { Source } from '../finding/source.ts'
import type { Region } from '../geometry/shape/contour.ts'
import type { TransferName } from '../plan/part-plan.ts'
import type { Feature, Missing } from './feature.ts'
import type { Joint, Pin } from './joint.ts'
import type { Pose } from './pose.ts'
import type { DefinedName, ScaledSize } from './provenance.ts'
import type { MadeCorner, OutlineFault, SizeDiffers, TaperFacts } from './shape-facts.ts'
import type { Size } from './size.ts'

/** One of the faces of the wood, before anything is cut out of it: a side, or a straight edge with a name. */
export type Face = { readonly id: FaceName; readonly pose: Pose; readonly region: Region }

/** The shape of one hand of a part. */
export type Solid = {
  /** The front, corners rounded and chamfered, before notches: x from 0 to the length, y from 0 to the width. */
  readonly outline: Region
  readonly faces: Readonly<Record<Side, Face>>
  /** The straight edges of the outline that have names. */
  readonly edges: readonly Face[]
  readonly features: readonly Feature[]
}

/** The face by its id. */
export function faceOf({ faces, edges }: Solid, id: FaceName): Face {
  const found = edges.find(edge => edge.id === id) ?? faces[id as Side]
  if (found === undefined) throw new RangeError(`a solid has no face ${id}`)
  return found
}

export type Part = {
  readonly id: string
  readonly label: string
  readonly shape: 'rectangle' | 'outline' | 'taper' | 'disc' | 'ring'
  readonly length: Size
  readonly width: Size
  readonly thickness: Size
  /** What the stock it is cut from is called, where the plan says. */
  readonly stock?: string
  readonly stockId?: string
  readonly wood?: string
  readonly note?: string
  /** The page of the paper drawing. */
  readonly page?: string
  readonly faceEdge: 'top' | 'bottom'
  readonly referenceEnd: 'left' | 'right'
  /** The maker's own words for sides. */
  readonly sideNames: { readonly [S in Side]?: string }
  /** How far inside the part's edge its template is cut, to guide the bush of a router. */
  readonly templateOffset?: Size
  /** How the shape comes from paper to wood: a sheet to glue on, lines marked on the wood, or whichever suits the part. */
  readonly transfer: Transfer
  /** The paper for holes on several faces: a panel for each face, or one net to fold round the block. Absent: as suits the part. */
  readonly wrap?: 'panels' | 'net'
  /** What the block really measures, where the maker has measured it. */
  readonly measured?: Measured
  /** What the drawing does not give of the outline. */
  readonly missing: readonly Missing[]
  /** The corners that are rounded or chamfered, in the part and in its cut-outs. */
  readonly corners: readonly MadeCorner[]
  readonly taper?: TaperFacts
  readonly sizeDiffers: readonly SizeDiffers[]
  /** As the plan draws it. */
  readonly drawn: Solid
  readonly pieces: readonly Piece[]
  readonly source: Source
}

export type Transfer = TransferName

/** Length, width and thickness as measured on the wood. */
export type Measured = { readonly length: Size; readonly width: Size; readonly thickness: Size }

/** One piece of wood to make: "side-frame/2". In a mirrored piece every side keeps its name; the end called left lies at the right. */
export type Piece = {
  readonly id: string
  readonly number: number
  readonly hand: 'drawn' | 'mirrored'
  readonly solid: Solid
}

/** A part that cannot be drawn: the drawing does not give its size, or its outline is none. */
export type Undrawn = {
  readonly id: string
  readonly label: string
  readonly missing: readonly Missing[]
  readonly outlineFaults: readonly OutlineFault[]
  readonly source: Source
}

/** What is on the rack. A size that the drawing does not give, or the plan does not say, is absent. */
export type Stock = {
  readonly id: string
  readonly label: string
  readonly thickness?: Size
  readonly width?: Size
  readonly length?: Size
  readonly count?: number
  readonly wood?: string
  readonly source: Source
}

export type Model = {
  readonly title: string
  readonly file: string
  readonly units: 'inch' | 'mm'
  /** The step that sizes are shown in, in millimetres. */
  readonly precision: number
  /** Which way round the views of a mark-out stand: third angle, or first. */
  readonly projection: 'third' | 'first'
  readonly stock: readonly Stock[]
  readonly pins: readonly Pin[]
  readonly parts: readonly Part[]
  readonly undrawn: readonly Undrawn[]
  readonly joints: readonly Joint[]
  /** Every name of the plan and where it is used. */
  readonly names: readonly DefinedName[]
  /** What was scaled off the drawing and is not confirmed. */
  readonly scaled: readonly ScaledSize[]
}
