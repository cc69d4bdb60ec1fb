import type { Caption, Drawing } from '../../drawing/drawing.ts'
import { boundsOfMarks } from '../../drawing/mark-bounds.ts'
import { sayFace } from '../../finding/face-name.ts'
import type { Region } from '../../geometry/shape/contour.ts'
import { distance } from '../../geometry/shape/point.ts'
import { rectangle } from '../../geometry/shape/rectangle.ts'
import { errorWords } from '../error-words.ts'
import { keyOf } from '../key/key-entry.ts'
import { boxAbout } from '../label/find-place.ts'
import type { Sheet, SheetContext, SheetMaker } from '../sheet.ts'
import { handsOf, pieceName, piecesInWords, type Served } from '../template/pieces-served.ts'
import { titleUnder } from '../title.ts'
import { whenLookedAt } from '../when-looked-at.ts'
import { type WordedDrawings, withWords } from '../with-words.ts'
import { blockOf } from './block.ts'
import { drawPanels, enteringPanels, type OnPanels } from './draw-panels.ts'
import { foldsOf, netOf, type Panel, panelsInColumns, panelsOf } from './net.ts'
import { onFaces } from './on-faces.ts'
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
  const named = chosen.as === 'net' ? { name: pieceName(served) } : {}
  const on: OnPanels = { served, block, shown, fenced, ...named }
  const toLayOut = { id, on, chosen }
  const [first, ...others] = layouts.map(panels => laidOut({ ...toLayOut, panels }, context))
  if (first === undefined) throw new RangeError('a wrap is laid out')
  const [{ drawings, beside = [] }] = first.otherwise
  const alone = chosen.as === 'net' ? [] : panelsAlone({ ...toLayOut, panels: layouts[0] }, context)
  const [panel, ...panels] = alone
  return {
    id,
    kind: 'wrap',
    part: part.id,
    drawings: [...first.drawings, ...others.flatMap(other => other.drawings)],
    otherwise: [
      { drawings: [...drawings, ...others.flatMap(other => other.otherwise[0].drawings)], beside },
      // what is cut apart anyway goes on as many pages as it needs, and no seam runs through it
      ...(panel === undefined
        ? []
        : [{ drawings: [panel] as const, beside: [...panels.map(one => [one] as const), ...beside] }]),
    ],
    large: first.large,
  }
}

type ToLayOut = {
  readonly id: string
  readonly on: OnPanels
  readonly chosen: ChosenWrap
  readonly panels: readonly Panel[]
}

/** Panels with all that stands on them, and the words beside them. */
function laidOut(toLayOut: ToLayOut, context: SheetContext): WordedDrawings {
  const { id, on, chosen, panels } = toLayOut
  const { fonts } = context
  const { served, shown, block } = on
  const { part } = served
  const name = pieceName(served)
  const entering = enteringPanels(panels, on)
  const key = keyOf(entering)
  const { marks, unlettered, nameless, named, errors } = drawPanels(panels, on, key, context)
  const comeOut = new Set([...shown.values()].flatMap(({ exits }) => exits.map(exit => exit.id)))
  const elsewhere = entering
    .filter(
      ({ shape, ...feature }) =>
        shape.kind === 'bore' && shape.depth === 'through' && !comeOut.has(feature.id),
    )
    .map(feature => feature.id)
  const wrapped = {
    panels,
    nameless,
    unnamed: chosen.as === 'net' && !named,
    unlettered,
    measured: block.measured,
    exits: comeOut.size > 0,
    elsewhere,
  }
  const caption = captionOf(toLayOut, context)
  return withWords(
    {
      about: { id, caption },
      marks,
      box: boundsOfMarks(fonts, marks),
      keepWhole: postsAlong(panels),
      title: [
        `${part.label} · ${caption.sheet} · ${piecesInWords(served)}`,
        ...errorWords(part, context, errors),
      ],
      apart: { under: [...(named ? [] : [name]), whereLettersAre(on)], over: name },
      lines: wrapKey(served, chosen, key, wrapped, context),
    },
    fonts,
  )
}

/** Every panel as a drawing of its own, with the piece's name under it. */
function panelsAlone(toLayOut: ToLayOut, context: SheetContext): readonly Drawing[] {
  const { id, on, panels } = toLayOut
  const { fonts } = context
  const key = keyOf(enteringPanels(panels, on))
  return panels.map(panel =>
    whenLookedAt({ id: `${id}-${sayFace(panel.face.id)}`, caption: captionOf(toLayOut, context) }, () => {
      const { marks } = drawPanels([panel], on, key, context)
      const box = boundsOfMarks(fonts, marks)
      const hasLetters = enteringPanels([panel], on).length > 0
      const title = [pieceName(on.served), ...(hasLetters ? [whereLettersAre(on)] : [])]
      const all = [...marks, ...titleUnder(title, box, fonts)]
      return { marks: all, bounds: boundsOfMarks(fonts, all) }
    }),
  )
}

/** Beside what has letters and no key, which may lie on another paper. */
function whereLettersAre({ served }: OnPanels): string {
  return `letters: see the key of ${pieceName(served)}`
}

function captionOf({ on: { served }, chosen }: ToLayOut, { model }: SheetContext): Caption {
  return {
    plan: model.title,
    sheet: chosen.as === 'net' ? 'wrap, one net' : 'wrap, a panel for each face',
    part: served.part.label,
    pieces: piecesInWords(served),
  }
}

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
