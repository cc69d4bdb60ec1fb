import type { Contour, Region } from '../geometry/shape/contour.ts'
import type { Point } from '../geometry/shape/point.ts'
import { polyline } from '../geometry/shape/polygon.ts'
import type { Words } from '../text/words.ts'
import type { LineRole } from './line-role.ts'
import type { Layer, Mark, Text } from './mark.ts'

/*
 * Marks are written out key by key, with and without a subject: the engine gives an object that is begun by spreading
 * another a hidden class of its own, and there are tens of thousands of marks, which everything looks into.
 */

/** Where a mark belongs: its layer and, where it has one, its subject. */
export type Belongs = { readonly layer: Layer; readonly subject?: string }

export function pathMark({ layer, subject }: Belongs, role: LineRole, contours: readonly Contour[]): Mark {
  if (subject === undefined) return { kind: 'path', layer, role, contours }
  return { kind: 'path', layer, subject, role, contours }
}

/** Straight lines, each from one point to another. */
export function linesMark(
  belongs: Belongs,
  role: LineRole,
  lines: readonly (readonly [Point, Point])[],
): Mark {
  return pathMark(
    belongs,
    role,
    lines.map(ends => polyline(ends)),
  )
}

export function fillMark({ layer, subject }: Belongs, regions: readonly Region[]): Mark {
  if (subject === undefined) return { kind: 'fill', layer, regions }
  return { kind: 'fill', layer, subject, regions }
}

/** A line of text that reads from left to right and starts at `at`, unless it is said otherwise. */
export function textMark(
  { layer, subject }: Belongs,
  words: Words,
  at: Point,
  height: number,
  { align = 'start', angle = 0, weight = 'regular' }: Partial<Pick<Text, 'align' | 'angle' | 'weight'>> = {},
): Mark {
  if (subject === undefined) return { kind: 'text', layer, words, at, height, align, angle, weight }
  return { kind: 'text', layer, subject, words, at, height, align, angle, weight }
}
