import { chordContour } from '../../geometry/approximate/chords.ts'
import { regionBounds } from '../../geometry/measure/bounds.ts'
import type { Bounds, Region } from '../../geometry/shape/contour.ts'
import type { Point } from '../../geometry/shape/point.ts'
import { grown, shareWithin } from '../label/clear-space.ts'
import { clearance } from '../label/find-place.ts'
import type { Stretch } from '../label/obstacles.ts'

/** From one line of the hatching to the next, square to them: far enough apart to write between. */
const pitch = 2
/** What is left of a line beside something spared has to be longer than this to be seen as one. */
const shortest = 0.6
/** How far hatching may end from the edge of a curve. */
const chordDeviation = 0.02

/** Lines that climb to the right at 45°, within the regions and clear of the boxes. */
export function hatch(regions: readonly Region[], spared: readonly Bounds[]): readonly Stretch[] {
  const boxes = spared.map(box => grown(box, clearance))
  return regions
    .flatMap(linesIn)
    .flatMap(line => without(line, boxes))
    .filter(([a, b]) => Math.hypot(b.x - a.x, b.y - a.y) > shortest)
}

/** A line of the hatching holds the points with x − y = c; c is a multiple of one step, so that neighbours line up. */
function linesIn(region: Region): readonly Stretch[] {
  const edges = [region.outer, ...region.holes].flatMap(c => chordContour(c, chordDeviation).segments)
  const { left, right, bottom, top } = regionBounds(region)
  const step = pitch * Math.SQRT2
  const lines: Stretch[] = []
  for (let n = Math.ceil((left - top) / step); n <= (right - bottom) / step; n++) {
    const c = n * step
    const height = (p: Point): number => p.x - p.y - c
    const crossings = edges
      // an end on the line itself belongs to one side, so that crossings always come in pairs
      .filter(({ from, to }) => height(from) > 0 !== height(to) > 0)
      .map(({ from, to }) => {
        const at = height(from) / (height(from) - height(to))
        return from.x + (to.x - from.x) * at
      })
      .sort((a, b) => a - b)
    for (let i = 0; i + 1 < crossings.length; i += 2) {
      const [from, to] = [crossings[i]!, crossings[i + 1]!]
      lines.push([
        { x: from, y: from - c },
        { x: to, y: to - c },
      ])
    }
  }
  return lines
}

function without(line: Stretch, boxes: readonly Bounds[]): readonly Stretch[] {
  return boxes.reduce<readonly Stretch[]>(
    (pieces, box) => pieces.flatMap(piece => outside(piece, box)),
    [line],
  )
}

function outside(line: Stretch, box: Bounds): readonly Stretch[] {
  const share = shareWithin(box, line)
  if (share === undefined) return [line]
  const [a, b] = line
  const at = (t: number): Point => ({ x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t })
  return [
    [a, at(share[0])],
    [at(share[1]), b],
  ]
}
