import type { Drawing } from '../drawing/drawing.ts'
import type { Spot } from '../finding/finding.ts'
import type { Model, Piece, Transfer } from '../model/part.ts'
import type { Fonts } from '../text/fonts.ts'
import type { Workshop } from '../workshop/workshop.ts'

/**
 * What one sheet shows, drawn in one or more arrangements, the best first: the same marks at true size, with what
 * stands beside them moved so that it fits another shape of paper.
 */
export type Sheet = {
  /** Unique within a run: "side-frame-template-mirrored". */
  readonly id: string
  readonly kind: string
  /** The part that it is about. */
  readonly part: string
  readonly drawings: readonly [Drawing, ...Drawing[]]
  /**
   * What it is drawn as on paper that holds none of them: the words on another paper, or the same smaller and smaller. The
   * first that fits is printed; where none does, it goes over several pages if it may.
   */
  readonly otherwise?: Iterable<Otherwise>
  /**
   * What a drawing of its lines alone is called, for a machine. Only the first sheet of several that show the same lines
   * has it.
   */
  readonly forMachine?: string
  /**
   * How it is drawn for paper that holds none of them: what may go over several pages, the same with its lettering where
   * seams can leave it whole, and the words beside it in several shapes.
   */
  readonly large?: {
    readonly drawing: Drawing
    readonly roomier?: Drawing
    readonly beside: readonly [Drawing, ...Drawing[]]
  }
}

/** A drawing in one or more arrangements, the best first, and what is laid beside it or on other pages, each in several shapes. */
export type Otherwise = {
  readonly drawings: readonly [Drawing, ...Drawing[]]
  readonly beside?: readonly (readonly [Drawing, ...Drawing[]])[]
  /** What all of its arrangements hold, what is quickest to know first: where no page holds one of these, none need be drawn. */
  readonly holds?: readonly Pick<Drawing, 'bounds'>[]
}

/** Whether every piece gets a paper of its own, or all pieces of one hand of a part share one. */
export type Copies = 'piece' | 'part'

/** What was found wrong with a part: a sentence, the cuts that it speaks of, and where on the drawn part it is to be marked. */
export type PartError = {
  readonly words: string
  readonly features: readonly string[]
  readonly spots: readonly Spot[]
}

export type SheetContext = {
  readonly model: Model
  readonly workshop: Workshop
  readonly fonts: Fonts
  /** One paper for each hand of a part where this is left out. */
  readonly copies?: Copies
  /** What was found wrong, by the ids of the parts. */
  readonly errors?: ReadonlyMap<string, readonly PartError[]>
  /** Whatever suits each part, all of them get this. */
  readonly everyPart?: Exclude<Transfer, 'auto'>
  /** The strips that are asked for; all that the parts need where this is left out. */
  readonly strip?: AskedStrip
}

/** A cut by its name, of which strips are wanted, and for pieces of which hand where that is said. */
export type AskedStrip = { readonly cut: string; readonly hand?: Piece['hand'] }

/** Draws all sheets of one kind, in the order of the plan's parts. */
export type SheetMaker = (context: SheetContext) => readonly Sheet[]
