import { lettering } from '../../drawing/lettering.ts'
import { pathMark, textMark } from '../../drawing/make-mark.ts'
import type { Mark } from '../../drawing/mark.ts'
import { boundsOfMarks } from '../../drawing/mark-bounds.ts'
import { wrap } from '../../drawing/wrap.ts'
import type { Bounds } from '../../geometry/shape/contour.ts'
import { polygon } from '../../geometry/shape/polygon.ts'
import { rectangle } from '../../geometry/shape/rectangle.ts'
import { errorWords } from '../error-words.ts'
import { keyOf } from '../key/key-entry.ts'
import type { Sheet, SheetContext, SheetMaker } from '../sheet.ts'
import { pieceName, piecesInWords } from '../template/pieces-served.ts'
import { type TrueSize, withWords } from '../with-words.ts'
import { borderWords } from './border-words.ts'
import { halfTurned, halfTurnedBox } from './half-turn.ts'
import { type StripFace, stripFace } from './strip-face.ts'
import { linesOnStrip, stripKey, stripNames } from './strip-words.ts'
import { type Strip, stripsOf } from './strips-of.ts'
import type { Arrangement } from './words-over.ts'

/** Drill strips: one for every setting of the fence that a part is bored with. */
export const stripSheets: SheetMaker = context =>
  context.model.parts.flatMap(part => stripsOf(part, context.strip).map(strip => stripSheet(strip, context)))

function stripSheet(strip: Strip, context: SheetContext): Sheet {
  const { served, setting, hand, turned } = strip
  const { part } = served
  const features = setting.faces.flatMap(({ holes }) => holes.map(({ feature }) => feature))
  const key = keyOf(features)
  const letterOf = (feature: (typeof features)[number]): string | undefined =>
    key.length > 1 ? key.find(({ members }) => members.includes(feature))?.letter : undefined
  const names = stripNames(strip)
  const name = `${turned === undefined ? pieceName(served) : part.id} · ${names}`
  const pieces =
    turned === undefined ? piecesInWords(served) : `all ${part.pieces.length}, mirrored ones turned over`
  const drawn = (arrangement: Arrangement): DrawnStrip =>
    drawnStrip(
      strip,
      setting.faces.map((face, i) =>
        stripFace(
          face,
          setting,
          linesOnStrip(strip, i, name, key, context),
          letterOf,
          part,
          hand,
          arrangement,
          context,
        ),
      ),
      context,
    )
  const { every, ...onOnePage } = drawn('rows')
  return {
    id: strip.id,
    kind: 'strip',
    part: part.id,
    ...withWords(
      {
        about: {
          id: strip.id,
          caption: { plan: context.model.title, sheet: `drill strip for ${names}`, part: part.label, pieces },
        },
        ...onOnePage,
        roomier: () => drawn('column'),
        title: [`${part.label} · drill strip for ${names} · ${pieces}`, ...errorWords(part, context)],
        lines: stripKey(strip, key, every, context),
      },
      context.fonts,
    ),
  }
}

/** The paper of a strip, with all that is drawn true to size. */
type DrawnStrip = TrueSize & { readonly every: number }

function drawnStrip(
  { hand, served: { part }, setting }: Strip,
  faces: readonly StripFace[],
  context: SheetContext,
): DrawnStrip {
  const [first, second] = faces
  if (first === undefined) throw new RangeError('a strip lies on a face')
  const { toward, fence } = setting.faces[0].frame
  const over =
    second === undefined
      ? flap(`over the ${borderWords(fence, part, hand)}: this side to the fence`, first, toward, context)
      : { marks: second.marks.map(halfTurned), outline: bothEnds(first, second, toward) }
  const marks = [...first.marks, ...over.marks, over.outline]
  const whole = [...first.whole, ...(second?.whole.map(halfTurnedBox) ?? [])]
  return {
    marks,
    box: boundsOfMarks(context.fonts, marks),
    keepWhole: whole.map(rectangle),
    every: Math.max(...faces.map(face => face.every)),
  }
}

type Over = { readonly marks: readonly Mark[]; readonly outline: Mark }

const flapMargin = 1.6
const belongs = { layer: 'paper', subject: 'strip' } as const

/** The paper that is folded over the edge at the fence, what stands on it, and the line round the whole strip. */
function flap(text: string, face: StripFace, toward: 1 | -1, { fonts }: SheetContext): Over {
  const { reach, tab, top, over } = face
  const left = toward === 1 ? 0 : -reach
  const rows = wrap(text, fonts.regular, lettering.medium, reach - 2 * flapMargin)
  const pitch = lettering.medium + 1.5
  const depth = Math.max(leastFlap, over + rows.length * pitch + 2 * flapMargin)
  const at = (x: number, y: number) => ({ x: toward * x, y })
  const corners = [
    at(0, -depth),
    at(reach, -depth),
    at(reach, top),
    at(-tab, top),
    at(-tab, -underTab),
    at(0, -underTab),
  ]
  return {
    marks: rows.map((row, i) =>
      textMark(
        { layer: 'text', subject: 'flap' },
        [row],
        { x: left + flapMargin, y: -over - flapMargin - lettering.medium - i * pitch },
        lettering.medium,
      ),
    ),
    outline: pathMark(belongs, 'rough-cut', [polygon(corners)]),
  }
}

/** Enough paper to be held at the fence by. */
const leastFlap = 9
/** Paper that the tab keeps under the fold, beside the flap. */
const underTab = 1.8

/** The strip for both ends has one on either side of the fold. */
function bothEnds(first: StripFace, second: StripFace, toward: 1 | -1): Mark {
  const reach = Math.max(first.reach, second.reach)
  const tab = Math.max(first.tab, second.tab)
  const box: Bounds = {
    left: toward === 1 ? -tab : -reach,
    right: toward === 1 ? reach : tab,
    bottom: -second.top,
    top: first.top,
  }
  return pathMark(belongs, 'rough-cut', [rectangle(box).outer])
}
