import type { Bounds } from '../../geometry/shape/contour.ts'
import { coincident } from '../../number/tolerance.ts'

/** Width and height of something that is put on paper, in millimetres. */
export type Extent = { readonly width: number; readonly height: number }

/** Something that is put on a page whole, in one of several shapes, the best first; it may be turned by a quarter. */
export type Item = {
  /** What belongs together has the same group and stands together in the list. */
  readonly group: string
  readonly shapes: readonly Extent[]
}

/** Where an item lies: `x` to the right and `y` down from the upper left corner of a page's free space. */
export type Spot = {
  /** Its place in the list of items. */
  readonly item: number
  readonly shape: number
  readonly turned: boolean
  readonly x: number
  readonly y: number
}

export function extentOf({ left, right, bottom, top }: Bounds): Extent {
  return { width: right - left, height: top - bottom }
}

/** Whether something fits a room, as it is or turned. */
export function fitsIn(extent: Extent, room: Extent): boolean {
  return [false, true].some(turned => {
    const { width, height } = asItLies(extent, turned)
    return width <= room.width + coincident && height <= room.height + coincident
  })
}

/** The extent of a shape as it lies. */
export function asItLies(extent: Extent, turned: boolean): Extent {
  return turned ? { width: extent.height, height: extent.width } : extent
}

export function area({ width, height }: Extent): number {
  return width * height
}

export function grownBy({ width, height }: Extent, gap: number): Extent {
  return { width: width + gap, height: height + gap }
}

/** A shape of an item, by its number, with the white that is kept around it. */
export type Wanted = Extent & { readonly shape: number }

/** What each item wants of a page: its shapes with the gap at their right and below, the smallest first. */
export function wantedBy(items: readonly Item[], gap: number): readonly (readonly Wanted[])[] {
  return items.map(({ shapes }) =>
    shapes
      .map((extent, shape) => ({ ...grownBy(extent, gap), shape }))
      .sort((a, b) => area(a) - area(b) || a.shape - b.shape),
  )
}

/** The shape that takes the least paper. */
export function smallest(shapes: readonly Extent[]): Extent {
  return shapes.reduce((a, b) => (area(b) < area(a) ? b : a))
}
