import type { Mark } from '../../drawing/mark.ts'
import type { FaceName } from '../../finding/face-name.ts'
import { apply } from '../../geometry/shape/matrix.ts'
import { faceOf } from '../../model/part.ts'
import { toPart } from '../../model/pose.ts'
import { type ErrorSpot, errorSpotsOn, putErrorSigns } from '../error-signs.ts'
import type { KeyEntry } from '../key/key-entry.ts'
import { emptyBoard } from '../label/board.ts'
import { grown } from '../label/clear-space.ts'
import type { SheetContext } from '../sheet.ts'
import { putCircleLetters } from '../template/circle-letters.ts'
import { putLetters, type Unlettered } from '../template/letter-marks.ts'
import type { Served } from '../template/pieces-served.ts'
import type { Block } from './block.ts'
import { boundsOfPanels, type Panel } from './net.ts'
import type { Entering, OnFace } from './on-faces.ts'
import { borderMarks, enteringMarks, enteringOn, exitMarks } from './panel-marks.ts'
import { putPanelWords } from './panel-words.ts'
import { putPieceName } from './piece-name.ts'

/** What stands on the panels of a block, and on whose faces it is seen. */
export type OnPanels = {
  readonly served: Served
  readonly block: Block
  readonly shown: ReadonlyMap<FaceName, OnFace>
  /** The ids of the holes that a fence sets. */
  readonly fenced: ReadonlySet<string>
  /** The piece's name, where it stands on the panels themselves. */
  readonly name?: string
}

/** Panels with all that stands on them, and what found no room. */
export type DrawnPanels = {
  readonly marks: readonly Mark[]
  readonly unlettered: readonly Unlettered[]
  readonly nameless: readonly Panel[]
  /** Whether the piece's name stands on them. */
  readonly named: boolean
  /** The numbers of the errors that are marked. */
  readonly errors: readonly number[]
}

/** How far outside the panels words and letters may stand. */
const wordsBeyond = 12

/** What enters on panels, as it lies on the paper, in the order of the plan, so that every paper of a part letters it alike. */
export function enteringPanels(panels: readonly Panel[], { served, shown }: OnPanels): readonly Entering[] {
  const order = new Map(served.pieces[0].solid.features.map(({ id }, i) => [id, i]))
  return panels
    .flatMap(panel => enteringOn(panel, onPanel(panel, shown)))
    .toSorted((a, b) => order.get(a.id)! - order.get(b.id)!)
}

/** Draws panels; what enters on them has the letters of `key`, which may have members on others. */
export function drawPanels(
  panels: readonly Panel[],
  on: OnPanels,
  key: readonly KeyEntry[],
  context: SheetContext,
): DrawnPanels {
  const { fonts } = context
  const { served, shown, fenced, name } = on
  const { part, pieces } = served
  const { solid, hand } = pieces[0]
  const entering = enteringPanels(panels, on)
  const here = new Set(entering.map(({ id }) => id))
  const board = emptyBoard()
  board.draw(borderMarks(panels, part.id))
  board.draw(entering.flatMap(feature => enteringMarks(feature, part.id, fenced.has(feature.id))))
  board.draw(panels.flatMap(panel => exitMarks(panel, onPanel(panel, shown), part.id)))
  const area = grown(boundsOfPanels(panels), wordsBeyond)
  const lettered = key.flatMap(({ letter, members }): readonly KeyEntry[] => {
    const [first, ...others] = members.filter(({ id }) => here.has(id))
    return first === undefined ? [] : [{ letter, members: [first, ...others] }]
  })
  const errors = putErrorSigns(spotsOn(panels, on, context), board, area, fonts)
  const unlettered = putLetters(lettered, part.id, board, area, fonts)
  const nameless = putPanelWords(panels, part, solid, hand, board, area, fonts)
  putCircleLetters(lettered, part.id, board, area, fonts)
  const named = name !== undefined && putPieceName(panels, name, board, area, fonts)
  return { marks: board.marks, unlettered, nameless, named, errors }
}

/** What was found wrong, where it lies on the paper; on a block off its size as far from the reference sides as planned. */
function spotsOn(
  panels: readonly Panel[],
  { served, block }: OnPanels,
  context: SheetContext,
): readonly ErrorSpot[] {
  const { part, pieces } = served
  const { solid, hand } = pieces[0]
  return panels.flatMap(({ face: { id }, toPaper }) =>
    errorSpotsOn(id, part, hand, context).map(({ at, number }) => ({
      at: apply(toPaper, block.seenOn(id, toPart(faceOf(solid, id).pose, at))),
      number,
    })),
  )
}

function onPanel({ face }: Panel, shown: ReadonlyMap<FaceName, OnFace>): OnFace {
  return shown.get(face.id) ?? { enters: [], exits: [] }
}
