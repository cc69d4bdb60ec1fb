import { pointAt } from '../../geometry/measure/along.ts'
import type { Contour } from '../../geometry/shape/contour.ts'
import type { Point } from '../../geometry/shape/point.ts'
import type { Segment } from '../../geometry/shape/segment.ts'
import { angleText } from '../../length/show-angle.ts'
import { showLength } from '../../length/show-length.ts'
import type { Placed } from '../../model/feature.ts'
import type { Model } from '../../model/part.ts'
import { printable } from '../../number/tolerance.ts'
import type { Words } from '../../text/words.ts'
import { circleOf } from '../circle-of-holes.ts'
import { grouped } from '../grouped.ts'
import { isFullCircle, withWholeArcs } from './arcs.ts'
import type { View } from './view.ts'

/** What is written beside a line: a radius, how wide what is round, a chamfer, an angle. */
export type Note = { readonly at: Point; readonly words: Words }

type Kind = { readonly is: 'radius' | 'across' | 'chamfer' | 'angle'; readonly value: number }
type Found = Kind & { readonly at: Point }

/** One note for all that is alike, at the first of them, with how many there are; in the face's millimetres. */
export function notesOf(
  view: View,
  isChamfer: (edge: Segment) => boolean,
  { units, precision }: Pick<Model, 'units' | 'precision'>,
): readonly Note[] {
  const contours = [
    ...view.wood.flatMap(({ outer, holes }) => [outer, ...holes]),
    ...view.own.flatMap(({ shape }) =>
      shape.kind === 'pocket' || shape.kind === 'cut-out' ? [shape.region.outer, ...shape.region.holes] : [],
    ),
  ]
  const show = (mm: number): Words => showLength(mm, { unit: units, precision }, { unitMark: false })
  const say = ({ is, value }: Kind): Words => {
    switch (is) {
      case 'radius':
        return ['R ', ...show(value)]
      case 'across':
        return [...show(value), ' across']
      case 'chamfer':
        return ['chamfer ', ...show(value)]
      case 'angle':
        return [angleText(value)]
    }
  }
  const found = contours.flatMap(contour => inContour(contour, isChamfer))
  const alike = grouped(found, ({ is, value }) => `${is} ${Math.round(value / printable)}`)
  const lines = [...alike.values()].map(
    (members): Note => ({
      at: members[0]!.at,
      words: [...say(members[0]!), ...(members.length > 1 ? [` (${members.length})`] : [])],
    }),
  )
  return [...lines, ...circlesOfHoles(view.own, show)]
}

function inContour(contour: Contour, isChamfer: (edge: Segment) => boolean): readonly Found[] {
  const { segments } = contour
  const [first] = segments
  if (first === undefined) return []
  if (isFullCircle(contour) && first.kind === 'arc')
    return [{ is: 'across', value: 2 * first.radius, at: pointAt(first, 0.25) }]
  return withWholeArcs(contour).segments.flatMap((edge): Found[] => {
    const at = pointAt(edge, 0.5)
    if (edge.kind === 'arc') return [{ is: 'radius', value: edge.radius, at }]
    const dx = Math.abs(edge.to.x - edge.from.x)
    const dy = Math.abs(edge.to.y - edge.from.y)
    if (Math.min(dx, dy) < printable) return []
    return isChamfer(edge)
      ? [{ is: 'chamfer', value: dx, at }]
      : [{ is: 'angle', value: Math.atan2(Math.min(dx, dy), Math.max(dx, dy)), at }]
  })
}

/** How wide the circle is that the centres of a circle of holes lie on. */
function circlesOfHoles(own: readonly Placed[], show: (mm: number) => Words): readonly Note[] {
  return [...grouped(own, ({ cut }) => cut).values()].flatMap((holes): Note[] => {
    const circle = holes[0]!.row?.pattern === 'circle' ? circleOf(holes) : undefined
    if (circle === undefined) return []
    // beside the line of centres, half way between the first hole and the second
    const angle = firstAngle(holes, circle.centre) + Math.PI / holes.length
    const at = {
      x: circle.centre.x + circle.radius * Math.cos(angle),
      y: circle.centre.y + circle.radius * Math.sin(angle),
    }
    return [{ at, words: [...show(2 * circle.radius), ' circle'] }]
  })
}

function firstAngle(holes: readonly Placed[], centre: Point): number {
  const shape = holes[0]!.shape
  return shape.kind === 'bore' ? Math.atan2(shape.centre.y - centre.y, shape.centre.x - centre.x) : 0
}
