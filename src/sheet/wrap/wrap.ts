import { boundsOfMarks } from '../../drawing/mark-bounds.ts'
import type { FaceName } from '../../finding/face-name.ts'
import type { Region } from '../../geometry/shape/contour.ts'
import { distance } from '../../geometry/shape/point.ts'
import { rectangle } from '../../geometry/shape/rectangle.ts'
import { errorWords } from '../error-words.ts'
import { keyOf } from '../key/key-entry.ts'
import { emptyBoard } from '../label/board.ts'
import { grown } from '../label/clear-space.ts'
import { boxAbout } from '../label/find-place.ts'
import type { Sheet, SheetContext, SheetMaker } from '../sheet.ts'
import { putLetters } from '../template/letter-marks.ts'
import { handsOf, piecesInWords, type Served } from '../template/pieces-served.ts'
import { type WordedDrawings, withWords } from '../with-words.ts'
import { blockOf } from './block.ts'
import { boundsOfPanels, foldsOf, netOf, type Panel, panelsInColumns, panelsOf } from './net.ts'
import { type OnFace, onFaces } from './on-faces.ts'
import { borderMarks, enteringMarks, enteringOn, exitMarks } from './panel-marks.ts'
import { putPanelWords } from './panel-words.ts'
import { type ChosenWrap, chooseWrap, onStrips } from './which-wrap.ts'
import { wrapKey } from './wrap-words.ts'

/** Paper to lay round the blocks that have holes on several faces: panels, or a net; one for each piece or hand. */
export const wrapSheets: SheetMaker = context =>
  context.model.parts.flatMap(part => {
    const chosen = chooseWrap(part, context)
    if (chosen === undefined) return []
    const fenced = onStrips(part)
    return handsOf(part).flatMap(hand => {
      const forEach = context.copies === 'piece' && hand.pieces.length > 1
      const served = forEach ? hand.pieces.map((piece): Served => ({ part, pieces: [piece] })) : [hand]
      return served.map(one => wrapSheet(one, chosen, fenced, context))
    })
  })

function wrapSheet(
  served: Served,
  chosen: ChosenWrap,
  fenced: ReadonlySet<string>,
  context: SheetContext,
): Sheet {
  const { part, pieces } = served
  const { solid, hand, number } = pieces[0]
  const block = blockOf(part, solid)
  const shown = onFaces(solid, block)
  const faces = [...shown.keys()]
  const layouts =
    chosen.as === 'net'
      ? ([netOf(block, faces, part.shape === 'rectangle')] as const)
      : ([panelsOf(block, faces), panelsInColumns(block, faces)] as const)
  const suffix =
    context.copies === 'piece' && part.pieces.length > 1
      ? `-${number}`
      : hand === 'mirrored'
        ? '-mirrored'
        : ''
  const id = `${part.id}-wrap${suffix}`
  const [first, ...others] = layouts.map(panels =>
    laidOut({ id, served, chosen, fenced, shown, panels, measured: block.measured }, context),
  )
  if (first === undefined) throw new RangeError('a wrap is laid out')
  const [{ drawings, beside }] = first.otherwise
  return {
    id,
    kind: 'wrap',
    part: part.id,
    drawings: [...first.drawings, ...others.flatMap(other => other.drawings)],
    otherwise: [
      {
        drawings: [...drawings, ...others.flatMap(other => other.otherwise[0].drawings)],
        ...(beside === undefined ? {} : { beside }),
      },
    ],
    large: first.large,
  }
}

type ToLayOut = {
  readonly id: string
  readonly served: Served
  readonly chosen: ChosenWrap
  /** The ids of the holes that a fence sets. */
  readonly fenced: ReadonlySet<string>
  readonly shown: ReadonlyMap<FaceName, OnFace>
  readonly panels: readonly Panel[]
  readonly measured: boolean
}

/** Panels with all that stands on them, and the words beside them. */
function laidOut(
  { id, served, chosen, fenced, shown, panels, measured }: ToLayOut,
  context: SheetContext,
): WordedDrawings {
  const { fonts, model } = context
  const { part, pieces } = served
  const { solid, hand } = pieces[0]
  const on = (panel: Panel): OnFace => shown.get(panel.face.id) ?? { enters: [], exits: [] }
  const entering = panels.flatMap(panel => enteringOn(panel, on(panel)))
  const board = emptyBoard()
  board.draw(borderMarks(panels, part.id))
  board.draw(entering.flatMap(feature => enteringMarks(feature, part.id, fenced.has(feature.id))))
  board.draw(panels.flatMap(panel => exitMarks(panel, on(panel), part.id)))
  const area = grown(boundsOfPanels(panels), wordsBeyond)
  const key = keyOf(entering)
  const unlettered = putLetters(key, part.id, board, area, fonts)
  const nameless = putPanelWords(panels, part, solid, hand, board, area, fonts)
  const comeOut = new Set([...shown.values()].flatMap(({ exits }) => exits.map(exit => exit.id)))
  const elsewhere = entering
    .filter(
      ({ shape, ...feature }) =>
        shape.kind === 'bore' && shape.depth === 'through' && !comeOut.has(feature.id),
    )
    .map(feature => feature.id)
  const { marks } = board
  const sheet = chosen.as === 'net' ? 'wrap, one net' : 'wrap, a panel for each face'
  const wrapped = { panels, nameless, unlettered, measured, exits: comeOut.size > 0, elsewhere }
  return withWords(
    {
      about: { id, caption: { plan: model.title, sheet, part: part.label, pieces: piecesInWords(served) } },
      marks,
      box: boundsOfMarks(fonts, marks),
      keepWhole: postsAlong(panels),
      title: [`${part.label} · ${sheet} · ${piecesInWords(served)}`, ...errorWords(part, context)],
      lines: wrapKey(served, chosen, key, wrapped, context),
    },
    fonts,
  )
}

/** How far outside the panels words and letters may stand. */
const wordsBeyond = 12

/** From one post on a fold to the next, and how large it is. */
const betweenPosts = 12
const post = { width: 1, height: 1 } as const

/** Along every fold posts that a seam spares: one across the fold passes between them, one along it would meet them all. */
function postsAlong(panels: readonly Panel[]): readonly Region[] {
  return foldsOf(panels).flatMap(([from, to]) => {
    const count = Math.max(1, Math.floor(distance(from, to) / betweenPosts))
    return Array.from({ length: count }, (_, i) => {
      const share = (i + 0.5) / count
      const at = { x: from.x + (to.x - from.x) * share, y: from.y + (to.y - from.y) * share }
      return rectangle(boxAbout(at, post))
    })
  })
}
