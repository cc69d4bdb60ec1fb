import type { Contour, Region } from '../geometry/shape/contour.ts'
import type { Point } from '../geometry/shape/point.ts'
import { polyline } from '../geometry/shape/polygon.ts'
import type { Words } from '../text/words.ts'
import type { LineRole } from './line-role.ts'
import type { Layer, Mark, Text } from './mark.ts'

/** Where a mark belongs: its layer and, where it has one, its subject. */
export type Belongs = { readonly layer: Layer; readonly subject?: string }

export function pathMark(belongs: Belongs, role: LineRole, contours: readonly Contour[]): Mark {
  return { ...belongs, kind: 'path', role, contours }
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

export function fillMark(belongs: Belongs, regions: readonly Region[]): Mark {
  return { ...belongs, kind: 'fill', regions }
}

/** A line of text that reads from left to right and starts at `at`, unless it is said otherwise. */
export function textMark(
  belongs: Belongs,
  words: Words,
  at: Point,
  height: number,
  { align = 'start', angle = 0, weight = 'regular' }: Partial<Pick<Text, 'align' | 'angle' | 'weight'>> = {},
): Mark {
  return { ...belongs, kind: 'text', words, at, height, align, angle, weight }
}
