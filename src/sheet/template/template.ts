import type { Drawing } from '../../drawing/drawing.ts'
import { boundsOfMarks } from '../../drawing/mark-bounds.ts'
import { joinBounds } from '../../geometry/measure/bounds.ts'
import type { Point } from '../../geometry/shape/point.ts'
import { rectangle } from '../../geometry/shape/rectangle.ts'
import { keyOf } from '../key/key-entry.ts'
import { keyTable } from '../key/key-table.ts'
import type { Sheet, SheetContext, SheetMaker } from '../sheet.ts'
import { seenFromFront } from './cut-marks.ts'
import { keyLines } from './key-lines.ts'
import { onPart } from './on-part.ts'
import { handsOf, piecesInWords, type Served } from './pieces-served.ts'

/** A true-size template of each hand of every part, to be glued on the face side. */
export const templateSheets: SheetMaker = context =>
  context.model.parts.flatMap(part => handsOf(part).map(served => templateSheet(served, context)))

/** Beside the part, between it and its key. */
const gap = 6
/** The narrowest column that a key reads well in. */
const narrowKey = 72
const wideKey = 150

function templateSheet(served: Served, context: SheetContext): Sheet {
  const { part, pieces } = served
  const { solid, hand } = pieces[0]
  const { seen, elsewhere } = seenFromFront(solid)
  const key = keyOf(seen)
  const drawn = onPart(served, seen, key, context)
  const box = boundsOfMarks(context.fonts, drawn.marks)
  const lines = keyLines(served, key, elsewhere, drawn, context)

  // what tells the hands apart stands last, so that no two parts, whatever they are called, have the same id
  const id = `${part.id}-template${hand === 'mirrored' ? '-mirrored' : ''}`
  const caption = {
    plan: context.model.title,
    sheet: 'template for the face side',
    part: part.label,
    pieces: piecesInWords(served),
  }
  /** Made when it is looked at: most papers take the first arrangement. */
  const arranged = (at: Point, width: number): Drawing => {
    let made: Pick<Drawing, 'marks' | 'bounds'> | undefined
    const make = () => {
      if (made !== undefined) return made
      const table = keyTable(lines, at, width, context.fonts).marks
      const bounds = joinBounds(box, boundsOfMarks(context.fonts, table))
      made = { marks: [...drawn.marks, ...table], bounds }
      return made
    }
    return {
      id,
      caption,
      keepWhole: [rectangle(box)],
      get marks() {
        return make().marks
      },
      get bounds() {
        return make().bounds
      },
    }
  }
  const below = (width: number): Drawing =>
    arranged({ x: box.left, y: box.bottom - gap }, Math.max(box.right - box.left, width))
  const beside = arranged({ x: box.right + gap, y: box.top }, narrowKey)
  return { id, kind: 'template', part: part.id, drawings: [below(wideKey), below(narrowKey), beside] }
}
