import { lettering } from '../../drawing/lettering.ts'
import { linesMark } from '../../drawing/make-mark.ts'
import type { Mark } from '../../drawing/mark.ts'
import { isSide } from '../../finding/face-name.ts'
import { middleOfBounds, regionBounds } from '../../geometry/measure/bounds.ts'
import { pointInRegion } from '../../geometry/measure/inside.ts'
import type { Bounds, Region } from '../../geometry/shape/contour.ts'
import { apply } from '../../geometry/shape/matrix.ts'
import type { Point } from '../../geometry/shape/point.ts'
import type { Part, Piece, Solid } from '../../model/part.ts'
import { coincident } from '../../number/tolerance.ts'
import type { Fonts } from '../../text/fonts.ts'
import type { Board } from '../label/board.ts'
import { boxAbout, type Extent, spreadFrom } from '../label/find-place.ts'
import { label } from '../label/place-text.ts'
import { sideBeyond } from '../side-beyond.ts'
import { borderWords, faceWords } from '../strip/border-words.ts'
import type { Border } from '../strip/fence-frame.ts'
import { foldsOf, onPaper, type Panel } from './net.ts'

/** From a border to the words along it. */
const aside = 1.3
const step = 2

type Edge = { readonly from: Point; readonly to: Point; readonly out: Point; readonly border: Border }

/** Puts the names of the panels on them, the arrows, and along their borders what lies there. Returns the panels without a name. */
export function putPanelWords(
  panels: readonly Panel[],
  part: Part,
  solid: Solid,
  hand: Piece['hand'],
  board: Board,
  area: Bounds,
  fonts: Fonts,
): readonly Panel[] {
  const folds = foldsOf(panels)
  const isFold = ({ from, to }: Edge): boolean =>
    folds.some(([a, b]) => near(a, from, b, to) || near(b, from, a, to))
  const edges = panels.map(panel => edgesOf(panel, solid))
  const nameless = panels.filter(panel => !putName(panel, part, hand, board, area, fonts))
  for (const [i, panel] of panels.entries()) putArrow(panel, edges[i]!, board, area, fonts)
  for (const edge of edges.flat()) if (!isFold(edge)) putBorder(edge, part, hand, board, area, fonts)
  return nameless
}

function near(a: Point, from: Point, b: Point, to: Point): boolean {
  return (
    Math.hypot(a.x - from.x, a.y - from.y) <= coincident && Math.hypot(b.x - to.x, b.y - to.y) <= coincident
  )
}

/** The four borders of a panel on the paper, and what lies at each. */
function edgesOf({ face, toPaper }: Panel, solid: Solid): readonly Edge[] {
  const { left, right, bottom, top } = regionBounds(face.region)
  return [
    { from: { x: left, y: bottom }, to: { x: right, y: bottom }, out: { x: 0, y: -1 } },
    { from: { x: right, y: bottom }, to: { x: right, y: top }, out: { x: 1, y: 0 } },
    { from: { x: right, y: top }, to: { x: left, y: top }, out: { x: 0, y: 1 } },
    { from: { x: left, y: top }, to: { x: left, y: bottom }, out: { x: -1, y: 0 } },
  ].flatMap(({ from, to, out }): readonly Edge[] => {
    const border = sideBeyond(solid, face.pose, out.x, out.y)
    // the ends of an edge that lies askew have no name of their own
    if (border === undefined || (!isSide(face.id) && border !== 'front' && border !== 'back')) return []
    const turned = { ...toPaper, e: 0, f: 0 }
    return [{ from: apply(toPaper, from), to: apply(toPaper, to), out: apply(turned, out), border }]
  })
}

/** Whether a box lies in a region by its corners and the middles of its sides. */
export function liesIn(region: Region, extent: Extent): (middle: Point) => boolean {
  return middle => {
    const { left, right, bottom, top } = boxAbout(middle, extent)
    return [left, middle.x, right].every(x =>
      [bottom, middle.y, top].every(y => pointInRegion(region, { x, y }) === 'inside'),
    )
  }
}

/** The name of the face on its panel, as large as there is room for. */
function putName(
  panel: Panel,
  part: Part,
  hand: Piece['hand'],
  board: Board,
  area: Bounds,
  fonts: Fonts,
): boolean {
  const region = onPaper(panel)
  const box = regionBounds(region)
  const full = faceWords(panel.face, part, hand)
  const short = isSide(panel.face.id) && !(hand === 'mirrored' && isEnd(panel.face.id)) ? panel.face.id : full
  return [
    [full, lettering.large],
    [short, lettering.large],
    [full, lettering.medium],
    [short, lettering.medium],
  ].some(([words, height]) =>
    [false, true].some(upward => {
      const { extent, markAt } = label(fonts, [`${words}`], Number(height), 'panel', {
        weight: 'bold',
        upward,
      })
      const places = spreadFrom(middleOfBounds(box), box, step, 900)
      return board.place(places, extent, area, at => [markAt(at)], liesIn(region, extent)) !== undefined
    }),
  )
}

function isEnd(id: string): boolean {
  return id === 'left' || id === 'right'
}

/** Toward the top, or on the top and bottom toward the front: an arrow with its word. */
function putArrow(panel: Panel, edges: readonly Edge[], board: Board, area: Bounds, fonts: Fonts): void {
  const { id } = panel.face
  const wanted = id === 'top' || id === 'bottom' || !isSide(id) ? 'front' : 'top'
  const edge = edges.find(({ border }) => border === wanted)
  if (edge === undefined) return
  const region = onPaper(panel)
  const box = regionBounds(region)
  const { out } = edge
  const { extent: word, markAt } = label(fonts, [wanted], lettering.medium, 'arrow')
  const upright = Math.abs(out.y) > Math.abs(out.x)
  for (const length of [10, 6]) {
    const reach = { x: Math.abs(out.x) * length, y: Math.abs(out.y) * length }
    const extent = upright
      ? { width: Math.max(word.width, reach.x, headBreadth), height: reach.y + wordGap + word.height }
      : { width: reach.x + wordGap + word.width, height: Math.max(word.height, reach.y, headBreadth) }
    const put = board.place(
      spreadFrom(middleOfBounds(box), box, step, 900),
      extent,
      area,
      middle => {
        const sign = upright ? Math.sign(out.y) : Math.sign(out.x)
        const by = (share: number, size: number): Point =>
          upright ? { x: middle.x, y: middle.y + share * size } : { x: middle.x + share * size, y: middle.y }
        const shaft = by(sign * 0.5, upright ? word.height + wordGap : word.width + wordGap)
        return [
          arrowMark(shaft, out, length),
          markAt(by(-sign * 0.5, upright ? reach.y + wordGap : reach.x + wordGap)),
        ]
      },
      liesIn(region, extent),
    )
    if (put !== undefined) return
  }
}

const wordGap = 1
const headBreadth = 3

/** An arrow about its middle. */
function arrowMark(middle: Point, out: Point, length: number): Mark {
  const at = (forth: number, beside: number): Point => ({
    x: middle.x + out.x * forth - out.y * beside,
    y: middle.y + out.y * forth + out.x * beside,
  })
  const tip = at(length / 2, 0)
  const half = headBreadth / 2 - 0.2
  return linesMark({ layer: 'text', subject: 'arrow' }, 'wide', [
    [at(-length / 2, 0), tip],
    [tip, at(length / 2 - 2.4, half)],
    [tip, at(length / 2 - 2.4, -half)],
  ])
}

/** What lies at a border, outside along it, near its middle where there is room. */
function putBorder(
  { from, to, out, border }: Edge,
  part: Part,
  hand: Piece['hand'],
  board: Board,
  area: Bounds,
  fonts: Fonts,
): void {
  const full = borderWords(border, part, hand)
  const short = hand === 'mirrored' && isEnd(border) ? full : border
  const upward = Math.abs(out.x) > Math.abs(out.y)
  // what the panel is laid flush with stands out
  const isReference = border === 'front' || border === part.faceEdge || border === part.referenceEnd
  const weight = isReference ? 'bold' : 'regular'
  for (const words of full === short ? [full] : [full, short]) {
    const { extent, markAt } = label(fonts, [words], lettering.medium, 'border', { upward, weight })
    const off = aside + (Math.abs(out.x) * extent.width + Math.abs(out.y) * extent.height) / 2
    const places = [0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8].map(share => ({
      x: from.x + (to.x - from.x) * share + out.x * off,
      y: from.y + (to.y - from.y) * share + out.y * off,
    }))
    if (board.place(places, extent, area, at => [markAt(at)]) !== undefined) return
  }
}
