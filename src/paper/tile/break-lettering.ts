import { textMark } from '../../drawing/make-mark.ts'
import type { Mark, Text } from '../../drawing/mark.ts'
import { chunksOf, inOneLine } from '../../drawing/wrap-words.ts'
import type { Bounds } from '../../geometry/shape/contour.ts'
import type { Vector } from '../../geometry/shape/point.ts'
import { coincident } from '../../number/tolerance.ts'
import type { Fonts } from '../../text/fonts.ts'
import { measureLine } from '../../text/lay-out.ts'
import type { Words } from '../../text/words.ts'
import { type MeasuredMark, measureMark } from './measured-mark.ts'
import { clearance } from './spare.ts'
import type { Tile } from './tile.ts'

/**
 * Lines of lettering too long for any tile are broken at blanks where they come to a seam, and go on beyond it: read
 * across the joined pages they are one line still, in smaller letters where it takes that. No word is cut: a line with one
 * that is longer than a tile stays as it is.
 */
export function breakLettering(
  marks: readonly MeasuredMark[],
  tiles: readonly Tile[],
  fonts: Fonts,
): readonly MeasuredMark[] {
  return marks.flatMap(measured => {
    const { mark, box } = measured
    if (mark.kind !== 'text' || tiles.some(({ window }) => fits(box, window))) return [measured]
    return broken(mark, box, tiles, fonts).map(piece => measureMark(piece, fonts))
  })
}

function fits(box: Bounds, window: Bounds): boolean {
  return (
    box.right - box.left <= window.right - window.left + coincident &&
    box.top - box.bottom <= window.top - window.bottom + coincident
  )
}

/** From where to where, in mm along a line of text. */
type Stretch = { readonly from: number; readonly to: number }

/** Shares of its height that a line is set at in turn: seams take room that it may not have. */
const heights = [1, 0.9, 0.8, 0.7]

/** The pieces of a line, at the largest height at which all of it finds room; the line itself where none does. */
function broken(text: Mark & Text, box: Bounds, tiles: readonly Tile[], fonts: Fonts): readonly Mark[] {
  // lettering is level or upright
  const along = { x: Math.round(Math.cos(text.angle)), y: Math.round(Math.sin(text.angle)) }
  const stretches = tiles
    .filter(({ window }) => isBeside(box, window, along))
    .map(tile => clearOfSeams(tile, along))
    .sort((a, b) => a.from - b.from)
  const { from } = stretchOf(box, along)
  for (const share of heights) {
    const pieces = setAlong(text, share * text.height, along, from, stretches, fonts)
    if (pieces !== undefined) return pieces
  }
  return [text]
}

/** Sets a line from `start` on at a height, as much of it on each stretch as finds room; undefined when some is left. */
function setAlong(
  text: Mark & Text,
  height: number,
  along: Vector,
  start: number,
  stretches: readonly Stretch[],
  fonts: Fonts,
): readonly Mark[] | undefined {
  const widthOf = (words: Words): number => measureLine(fonts[text.weight], words, height).width
  const pieces: Mark[] = []
  let at = start
  let left = chunksOf(text.words)
  for (const { from, to } of stretches) {
    at = Math.max(at, from)
    let count = 0
    while (count < left.length && at + widthOf(inOneLine(left.slice(0, count + 1))) <= to) count++
    if (count === 0) continue
    const words = inOneLine(left.slice(0, count))
    pieces.push(pieceAt(text, words, height, along, at))
    at += widthOf([...words, ' '])
    left = left.slice(count)
  }
  return left.length === 0 ? pieces : undefined
}

/** Whether a line of text passes through a window: the window holds it across. */
function isBeside(box: Bounds, window: Bounds, along: Vector): boolean {
  return along.x === 0
    ? box.left >= window.left - coincident && box.right <= window.right + coincident
    : box.bottom >= window.bottom - coincident && box.top <= window.top + coincident
}

function clearOfSeams({ cell, window }: Tile, along: Vector): Stretch {
  const [whole, shown] = [stretchOf(cell, along), stretchOf(window, along)]
  return {
    from: whole.from === shown.from ? whole.from : whole.from + clearance,
    to: whole.to === shown.to ? whole.to : whole.to - clearance,
  }
}

function stretchOf({ left, right, bottom, top }: Bounds, { x, y }: Vector): Stretch {
  if (x !== 0) return x > 0 ? { from: left, to: right } : { from: -right, to: -left }
  return y > 0 ? { from: bottom, to: top } : { from: -top, to: -bottom }
}

function pieceAt(text: Mark & Text, words: Words, height: number, along: Vector, from: number): Mark {
  const at = along.x === 0 ? { x: text.at.x, y: along.y * from } : { x: along.x * from, y: text.at.y }
  const { angle, weight } = text
  return textMark(text, words, at, height, { align: 'start', angle, weight })
}
