import type { Bounds } from '../../geometry/shape/contour.ts'

/** What one page shows of a drawing. The cell ends at the seams, the window half an overlap beyond them. */
export type Tile = { readonly cell: Bounds; readonly window: Bounds }
