import { linesMark, pathMark } from '../../drawing/make-mark.ts'
import type { Mark } from '../../drawing/mark.ts'
import type { Contour } from '../../geometry/shape/contour.ts'
import { distance, type Point } from '../../geometry/shape/point.ts'
import type { Segment } from '../../geometry/shape/segment.ts'
import { transformRegion } from '../../geometry/shape/transform.ts'
import { ovalContour, rimOval } from '../../model/bore/rim.ts'
import { workedLines } from '../../model/strip.ts'
import { coincident } from '../../number/tolerance.ts'
import { movedBore } from '../moved-bore.ts'
import { boreMarks } from '../template/bore-marks.ts'
import { crossArms } from '../template/hole-marks.ts'
import { foldsOf, onPaper, type Panel } from './net.ts'
import type { Entering, OnFace } from './on-faces.ts'

/** The borders of all panels: folds between them, and the edges that the paper is cut along. */
export function borderMarks(panels: readonly Panel[], part: string): readonly Mark[] {
  const folds = foldsOf(panels)
  const isFold = ({ kind, from, to }: Segment): boolean =>
    kind === 'line' && folds.some(([a, b]) => same(a, b, from, to) || same(b, a, from, to))
  const contours = panels.flatMap(panel => {
    const { outer, holes } = onPaper(panel)
    return [outer, ...holes].flatMap((contour): readonly Contour[] => {
      const cut = contour.segments.filter(segment => !isFold(segment))
      return cut.length === contour.segments.length
        ? [contour]
        : cut.map(one => ({ segments: [one], closed: false }))
    })
  })
  return [
    pathMark({ layer: 'cut', subject: part }, 'cut', contours),
    ...(folds.length > 0 ? [linesMark({ layer: 'cut', subject: 'fold' }, 'fold', folds)] : []),
  ]
}

function same(a: Point, b: Point, from: Point, to: Point): boolean {
  return distance(a, from) <= coincident && distance(b, to) <= coincident
}

/** What enters on a panel, as it lies on the paper. */
export function enteringOn({ toPaper }: Panel, { enters }: OnFace): readonly Entering[] {
  return enters.map((feature): Entering => {
    const { shape } = feature
    if (shape.kind === 'bore') return { ...feature, shape: movedBore(toPaper, shape) }
    return { ...feature, shape: { ...shape, region: transformRegion(shape.region, toPaper) } }
  })
}

/** The lines by which what enters is bored and cut; no dot to prick where a fence sets the hole. */
export function enteringMarks(feature: Entering, part: string, fenced: boolean): readonly Mark[] {
  const { id, shape } = feature
  const subject = `${part}.${id}`
  if (shape.kind === 'bore') return boreMarks(shape, subject, !fenced)
  const lines = shape.kind === 'groove' ? workedLines(shape.region) : [shape.region.outer]
  return [pathMark({ layer: 'cut', subject }, 'cut', lines)]
}

/** Where holes come out: the ring dashed, and the cross. */
export function exitMarks({ toPaper }: Panel, { exits }: OnFace, part: string): readonly Mark[] {
  return exits.flatMap(({ id, bore }): readonly Mark[] => {
    const belongs = { layer: 'drill', subject: `${part}.${id}.exit` } as const
    const moved = movedBore(toPaper, bore)
    const rim = rimOval(moved)
    return [
      pathMark(belongs, 'hidden', [ovalContour(rim)]),
      linesMark(belongs, 'thin', crossArms(moved.centre, rim.along)),
    ]
  })
}
