import type { Contour, Region } from '../geometry/shape/contour.ts'
import type { Point } from '../geometry/shape/point.ts'
import type { Weight } from '../text/fonts.ts'
import type { Words } from '../text/words.ts'
import type { LineRole } from './line-role.ts'

/** What a viewer or a machine can show or hide by itself. */
export type Layer = 'cut' | 'drill' | 'engrave' | 'dimension' | 'text' | 'paper'

/** Lines along contours, their middle on the contour. */
export type Path = { readonly kind: 'path'; readonly role: LineRole; readonly contours: readonly Contour[] }

/** Solid black. */
export type Fill = { readonly kind: 'fill'; readonly regions: readonly Region[] }

/**
 * One line of text. `at` is the point on the base line that `align` names; `height` is that of a capital letter
 * in millimetres; `angle` is in radians, positive counter-clockwise, 0 reads left to right.
 */
export type Text = {
  readonly kind: 'text'
  readonly words: Words
  readonly at: Point
  readonly height: number
  readonly align: 'start' | 'middle' | 'end'
  readonly angle: number
  readonly weight: Weight
}

/**
 * Something to see on paper, in millimetres, y up. `subject` is what it belongs to (a part, a feature), for
 * picking and for the ids of the output.
 */
export type Mark = { readonly layer: Layer; readonly subject?: string } & (Path | Fill | Text)
