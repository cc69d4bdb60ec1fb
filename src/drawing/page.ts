import type { Matrix } from '../geometry/shape/matrix.ts'
import type { Drawing } from './drawing.ts'
import type { Mark } from './mark.ts'

/** A sheet of paper, in millimetres, upright or lying as its width and height say. */
export type Paper = { readonly name: string; readonly width: number; readonly height: number }

/** A drawing on a page: `matrix` takes its millimetres to the page's, a shift with quarter turns and never a scale. */
export type Placed = { readonly drawing: Drawing; readonly matrix: Matrix }

/** An entry of a list of contents with the headings over it, outermost first: ["Side frame", "drill strip"]. */
export type Bookmark = readonly [string, ...string[]]

/**
 * A finished page. Its millimetres count from the lower left corner of the paper, y up. `correction` is what
 * makes a printer that is a little off print true; it applies to everything on the page, last.
 */
export type Page = {
  readonly paper: Paper
  readonly number: number
  /** What a viewer calls the page instead of its number: "cover". */
  readonly label?: string
  /** Entries of the file's list of contents that lead here. Without it what is placed here makes them, by its captions. */
  readonly bookmarks?: readonly Bookmark[]
  readonly placed: readonly Placed[]
  readonly furniture: readonly Mark[]
  readonly correction: Matrix
}

/** Pages with what the file that holds them says of itself. Pages may be made one at a time, as they are asked for. */
export type Packet = {
  readonly title: string
  /** BCP 47, such as "en". */
  readonly language: string
  /** Stands in the file as its date. Without one the file says none, and the same plan always gives the same bytes. */
  readonly date?: Date
  readonly pages: Iterable<Page>
}
