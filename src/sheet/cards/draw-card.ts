import { pathMark } from '../../drawing/make-mark.ts'
import type { Mark } from '../../drawing/mark.ts'
import type { Bounds } from '../../geometry/shape/contour.ts'
import { rectangle } from '../../geometry/shape/rectangle.ts'
import type { Fonts } from '../../text/fonts.ts'
import type { Block, Card } from './card.ts'
import { drawFields } from './draw-fields.ts'
import { sketchBoxes } from './sketch-boxes.ts'
import { blocksThatFit, valueTable } from './value-table.ts'

const belongs = { layer: 'text', subject: 'card' } as const
const fieldsHeight = 9
const gap = 3
/** Of the height of an upright card, and of the width of a lying one, what the sketches take. */
const sketched = 0.42
const sketchedAside = 0.47

/** What one card shows: marks, and the blocks that found no room and go on to the next. */
export type DrawnCard = { readonly marks: readonly Mark[]; readonly rest: readonly Block[] }

/** A card in a box: fields over sketches and table. One that goes on from another has no sketches. */
export function drawCard(box: Bounds, card: Card, begins: boolean, fonts: Fonts): DrawnCard {
  const strip = { ...box, bottom: box.top - fieldsHeight }
  const marks: Mark[] = [
    pathMark(belongs, 'wide', [rectangle(strip).outer]),
    ...drawFields(strip, card.fields, fonts),
  ]
  const body = { ...box, top: strip.bottom - gap }
  const { sketch, columns } = begins ? besideSketches(body) : { sketch: undefined, columns: halves(body) }
  if (sketch) marks.push(...sketchBoxes(sketch, card.sideNames, fonts))
  let rest = card.blocks
  for (const column of columns) {
    // a block that no column holds is drawn as far as it goes, and must not come again for ever
    const fits = blocksThatFit(rest, column, fonts)
    if (rest.length === 0) break
    marks.push(...valueTable(column, rest.slice(0, fits), fonts))
    rest = rest.slice(fits)
  }
  return { marks, rest }
}

/** An upright card has the table below its sketches, in two columns; a lying one has it beside them. */
function besideSketches(body: Bounds): { readonly sketch: Bounds; readonly columns: readonly Bounds[] } {
  const width = body.right - body.left
  const height = body.top - body.bottom
  if (width > height) {
    const split = body.left + sketchedAside * width
    return { sketch: { ...body, right: split }, columns: [{ ...body, left: split + gap }] }
  }
  const split = body.top - sketched * height
  return { sketch: { ...body, bottom: split }, columns: halves({ ...body, top: split - gap }) }
}

function halves(body: Bounds): readonly Bounds[] {
  const middle = (body.left + body.right) / 2
  return [
    { ...body, right: middle - gap / 2 },
    { ...body, left: middle + gap / 2 },
  ]
}
