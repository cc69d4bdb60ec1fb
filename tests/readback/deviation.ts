import { lineStyles } from '../../src/drawing/line-role.ts'
import type { Mark } from '../../src/drawing/mark.ts'
import type { Page } from '../../src/drawing/page.ts'
import type { Contour } from '../../src/geometry/shape/contour.ts'
import type { Matrix } from '../../src/geometry/shape/matrix.ts'
import type { Point } from '../../src/geometry/shape/point.ts'
import type { Fonts } from '../../src/text/fonts.ts'
import { layOut, reading } from '../../src/text/lay-out.ts'
import { textMatrix } from '../../src/text/place.ts'
import { legible } from '../../src/text/shown.ts'
import { plain } from '../../src/text/words.ts'
import { type Exact, exactContour, fromExact, toChain } from './exact.ts'
import { after, moved, movedCurve, type ReadBack, type ReadChain, type Six, unmoved } from './read-back.ts'

/** How far a finished page is from the page that was asked for, in millimetres, before the printer correction. */
export type Deviation = {
  /** The worst over all lines and fills: the file's from the exact ones, and the exact ones from the file's. */
  readonly lines: number
  /** The worst over the ends of base lines or the points of outlines of all text. */
  readonly text: number
  /** What the worst line belongs to. */
  readonly where: string
}

/**
 * Compares a page with what a reader found in its file.
 *
 * @throws Error when something is missing, is there and should not be, is painted with another width or other
 *   dashes, or reads differently
 */
export function worstDeviation(page: Page, read: ReadBack, fonts: Fonts): Deviation {
  const size = Math.max(Math.abs(read.width - page.paper.width), Math.abs(read.height - page.paper.height))
  const back = inverse(six(page.correction))
  const marks = [
    ...page.placed.flatMap(({ drawing, matrix }) =>
      drawing.marks.map(mark => ({ mark, matrix: six(matrix) })),
    ),
    ...page.furniture.map(mark => ({ mark, matrix: unmoved })),
  ]
  const lines = compareLines(marks, read, back)
  return { ...lines, lines: Math.max(lines.lines, size), text: compareTexts(marks, read, back, fonts) }
}

type PlacedMark = { readonly mark: Mark; readonly matrix: Six }

type Wanted = {
  readonly exact: Exact
  readonly paint: 'stroke' | 'fill'
  readonly width: number
  readonly dashes: readonly number[]
  readonly where: string
}

function compareLines(
  marks: readonly PlacedMark[],
  read: ReadBack,
  back: Six,
): { lines: number; where: string } {
  const unused = new Set(
    read.chains.map((chain): { chain: ReadChain; box: Box } => {
      const before = { ...chain, curves: chain.curves.map(c => movedCurve(back, c)) }
      return { chain: before, box: chainBox(before) }
    }),
  )
  const worst = { lines: 0, where: '' }
  for (const wanted of marks.flatMap(wantedContours)) {
    let nearest: { candidate: { chain: ReadChain; box: Box }; distance: number } | undefined
    const box = exactBox(wanted.exact)
    for (const candidate of unused) {
      if (!samePaint(wanted, candidate.chain, back)) continue
      const distance = boxDistance(box, candidate.box)
      if (nearest === undefined || distance < nearest.distance) nearest = { candidate, distance }
    }
    if (nearest === undefined) throw new Error(`the file has no more lines for ${wanted.where}`)
    unused.delete(nearest.candidate)
    const { curves } = nearest.candidate.chain
    const lines = Math.max(fromExact(wanted.exact, curves), toChain(wanted.exact, curves))
    if (lines > worst.lines) Object.assign(worst, { lines, where: wanted.where })
  }
  if (unused.size > 0) throw new Error(`the file has ${unused.size} lines that the page does not have`)
  return worst
}

function wantedContours({ mark, matrix }: PlacedMark): readonly Wanted[] {
  if (mark.kind === 'text') return []
  const contours: readonly Contour[] =
    mark.kind === 'path' ? mark.contours : mark.regions.flatMap(r => [r.outer, ...r.holes])
  const style = mark.kind === 'path' ? lineStyles[mark.role] : { width: 0, dashes: [] }
  return contours
    .filter(c => c.segments.length > 0)
    .map(contour => ({
      exact: exactContour(contour, matrix),
      paint: mark.kind === 'path' ? ('stroke' as const) : ('fill' as const),
      ...style,
      where: `${mark.layer} ${mark.subject ?? ''}`.trim(),
    }))
}

/** A width or dash of a tenth of a micrometre more or less is the same: readers hold 32 bits. */
const sameWidth = 1e-4

function samePaint(wanted: Wanted, chain: ReadChain, back: Six): boolean {
  const scale = Math.sqrt(Math.abs(back[0] * back[3] - back[1] * back[2]))
  return (
    wanted.paint === chain.paint &&
    wanted.exact.closed === chain.closed &&
    wanted.dashes.length === chain.dashes.length &&
    Math.abs(wanted.width - chain.width * scale) < sameWidth &&
    wanted.dashes.every((d, i) => Math.abs(d - chain.dashes[i]! * scale) < sameWidth)
  )
}

function compareTexts(marks: readonly PlacedMark[], read: ReadBack, back: Six, fonts: Fonts): number {
  const unused = new Set(read.texts)
  let worst = 0
  for (const { mark, matrix } of marks) {
    if (mark.kind !== 'text') continue
    const laid = layOut(fonts[mark.weight], mark.words, mark.height)
    const m = after(matrix, six(textMatrix(laid, mark)))
    const wanted = {
      'base-line': [
        { x: 0, y: 0 },
        { x: laid.width, y: 0 },
      ].map(p => moved(m, p)),
      outlines: laid.glyphs.flatMap(({ glyph, x }) =>
        glyph.outline.flatMap(step =>
          step.kind === 'close' ? [] : [moved(m, { x: x + laid.size * step.to.x, y: laid.size * step.to.y })],
        ),
      ),
    }
    // a blank line is not written at all
    if (wanted.outlines.length === 0) continue
    const words = { 'base-line': reading(laid), outlines: legible(plain(mark.words)) }
    let nearest = { distance: Infinity, text: undefined as (typeof read.texts)[number] | undefined }
    for (const text of unused) {
      const { place } = text
      if (text.text !== words[place.kind]) continue
      const points = place.kind === 'base-line' ? [place.start, place.end] : place.points
      const distance = boxDistance(pointsBox(wanted[place.kind]), pointsBox(points.map(p => moved(back, p))))
      if (distance < nearest.distance) nearest = { distance, text }
    }
    if (nearest.text === undefined) throw new Error(`the file does not say ${words['base-line']}`)
    unused.delete(nearest.text)
    worst = Math.max(worst, nearest.distance)
  }
  if (unused.size > 0) throw new Error(`the file says more: ${[...unused].map(t => t.text).join(', ')}`)
  return worst
}

type Box = readonly [left: number, bottom: number, right: number, top: number]

function pointsBox(points: readonly Point[]): Box {
  const xs = points.map(p => p.x)
  const ys = points.map(p => p.y)
  return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)]
}

const quarters = [0, 0.25, 0.5, 0.75, 1]

function chainBox({ curves }: ReadChain): Box {
  return pointsBox(curves.flatMap(c => quarters.map(c.at)))
}

function exactBox({ edges }: Exact): Box {
  return pointsBox(edges.flatMap(e => quarters.map(e.at)))
}

function boxDistance(a: Box, b: Box): number {
  return Math.max(...a.map((side, i) => Math.abs(side - b[i]!)))
}

function six(m: Matrix): Six {
  return [m.a, m.b, m.c, m.d, m.e, m.f]
}

function inverse([a, b, c, d, e, f]: Six): Six {
  const det = a * d - b * c
  return [d / det, -b / det, -c / det, a / det, (c * f - d * e) / det, (b * e - a * f) / det]
}
