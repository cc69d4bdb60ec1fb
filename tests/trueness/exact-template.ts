import { regionBounds } from '../../src/geometry/measure/bounds.ts'
import type { Contour } from '../../src/geometry/shape/contour.ts'
import type { Point } from '../../src/geometry/shape/point.ts'
import { finishedOutline } from '../../src/model/finished-outline.ts'
import type { Part, Piece } from '../../src/model/part.ts'
import { toPart } from '../../src/model/pose.ts'
import { type Exact, exactContour } from '../readback/exact.ts'
import { after, moved, type Six } from '../readback/read-back.ts'

/** What has to be in a file for one template: in millimetres from the paper's lower left corner. */
export type ExactTemplate = {
  /** The outline and what is cut out of it. */
  readonly cuts: readonly Exact[]
  readonly holes: readonly Ring[]
  /** Where leaning holes enter. */
  readonly ellipses: readonly Ellipse[]
  /** The mouths of holes, which a machine has no line for. */
  readonly mouths: readonly Ring[]
}

export type Ring = { readonly name: string; readonly centre: Point; readonly radius: number }

/** Half its axes, the first at `angle`. */
export type Ellipse = {
  readonly name: string
  readonly centre: Point
  readonly long: number
  readonly short: number
  readonly angle: number
}

/**
 * From the part as drawn and the place of its front on the paper, without a look at the marks. The other hand is
 * mirrored here, apart from the model's own way.
 */
export function exactTemplate(part: Part, hand: Piece['hand'], placement: Six): ExactTemplate {
  const mirror: Six = hand === 'mirrored' ? [-1, 0, 0, 1, part.length.mm, 0] : [1, 0, 0, 1, 0, 0]
  const place = after(placement, mirror)
  const { faces, features } = part.drawn
  return {
    cuts: contoursOf(part).map(contour => exactContour(contour, place)),
    ellipses: features.flatMap(({ id, face, shape }): Ellipse[] => {
      if (face !== 'front' || shape.kind !== 'bore' || !shape.lean) return []
      const { toward, angle } = shape.lean
      const { x, y } = shape.centre
      const centre = moved(place, shape.centre)
      const ahead = moved(place, { x: x + Math.cos(toward), y: y + Math.sin(toward) })
      const short = shape.diameter.mm / 2
      const turned = Math.atan2(ahead.y - centre.y, ahead.x - centre.x)
      return [{ name: `${part.id}.${id}`, centre, long: short / Math.cos(angle), short, angle: turned }]
    }),
    mouths: features.flatMap(({ id, face, shape }): Ring[] => {
      if (face !== 'front' || shape.kind !== 'bore' || !shape.mouth) return []
      if (shape.lean) throw new Error(`the mouth of ${id} leans, and is not worked out here`)
      const radius = shape.mouth.diameter.mm / 2
      return [{ name: `the mouth of ${part.id}.${id}`, centre: moved(place, shape.centre), radius }]
    }),
    holes: features.flatMap(({ id, face, shape }): Ring[] => {
      if (shape.kind === 'cut-out' && shape.entry !== undefined) {
        const { centre, diameter } = shape.entry
        return [{ name: `${part.id}.${id}.entry`, centre: moved(place, centre), radius: diameter / 2 }]
      }
      const shows =
        face === 'front' || (face === 'back' && shape.kind === 'bore' && shape.depth === 'through')
      if (shape.kind !== 'bore' || shape.lean || !shows) return []
      // looking at the front, x and y of the part are x and y of the paper
      const { x, y } = toPart(faces[face].pose, shape.centre)
      return [{ name: `${part.id}.${id}`, centre: moved(place, { x, y }), radius: shape.diameter.mm / 2 }]
    }),
  }
}

function contoursOf({ drawn }: Part): readonly Contour[] {
  const outline = finishedOutline(drawn).flatMap(({ outer, holes }) => [outer, ...holes])
  const pockets = drawn.features.flatMap(({ face, shape }) =>
    face === 'front' && (shape.kind === 'pocket' || shape.kind === 'cut-out') ? [shape.region.outer] : [],
  )
  return [...outline, ...pockets]
}

/**
 * Where a drawing for a cutting machine puts the part: everything that is cut with 1 mm around it. Holes and slots
 * of a sound part lie within its outline.
 */
export function placementAlone(part: Part, hand: Piece['hand']): Six {
  const boxes = finishedOutline(part.drawn).map(regionBounds)
  const left = Math.min(...boxes.map(b => b.left))
  const right = Math.max(...boxes.map(b => b.right))
  const bottom = Math.min(...boxes.map(b => b.bottom))
  const leftmost = hand === 'mirrored' ? part.length.mm - right : left
  return [1, 0, 0, 1, 1 - leftmost, 1 - bottom]
}
