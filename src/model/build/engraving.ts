import { boundsOfContours } from '../../geometry/measure/bounds.ts'
import type { Contour } from '../../geometry/shape/contour.ts'
import { shift } from '../../geometry/shape/matrix.ts'
import type { Point } from '../../geometry/shape/point.ts'
import { distance } from '../../geometry/shape/point.ts'
import { polygon, polyline } from '../../geometry/shape/polygon.ts'
import { transformContour } from '../../geometry/shape/transform.ts'
import { coincident } from '../../number/tolerance.ts'
import type { DrawnPoint, EngravePlan } from '../../plan/plan.ts'
import type { EngravedText, Feature, Missing } from '../feature.ts'
import type { Size } from '../size.ts'
import {
  type CutBuilder,
  described,
  facesOf,
  isKnown,
  missingSizes,
  type Resolved,
  unplaced,
} from './cut-builder.ts'
import type { FaceFrame } from './face-frame.ts'
import { coordinate, place } from './position.ts'
import { resolveDistance, resolvePositive } from './resolve-size.ts'
import type { Site } from './site.ts'

type Drawing<K> = Extract<EngravePlan['drawing'], { kind: K }>

/** Lines or letters on a face. */
export const buildEngraving: CutBuilder<EngravePlan> = (site, cut) => {
  const depth = cut.depth && resolvePositive(site.context, cut.depth, 'the depth')
  const made = cut.drawing.kind === 'text' ? textOn(site, cut.drawing) : linesOn(site, cut.drawing)
  const faces = facesOf(site, cut)
  if (faces === undefined || made === undefined || (cut.depth && depth === undefined)) return []
  return faces.flatMap(({ frame, id }): readonly Feature[] => {
    const shape = made(frame)
    if (shape === undefined) return []
    const missing = [...('missing' in shape ? shape.missing : []), ...missingSizes({ depth })]
    if ('missing' in shape || depth === 'unknown') return [unplaced(cut, id, frame.id, missing)]
    const deep = depth === undefined ? {} : { depth }
    return [{ id, face: frame.id, shape: { ...shape, ...deep }, ...described(cut) }]
  })
}

type Made<S> = (frame: FaceFrame) => S | { readonly missing: readonly Missing[] } | undefined

/**
 * A text with its near side where the plan puts it: from the right, its end. How long it is, only its letters say, so
 * the model holds one point of its base line. In the middle it is centred by the height of its capitals.
 */
function textOn(site: Site, { text, height: written, at }: Drawing<'text'>): Made<EngravedText> | undefined {
  const height = resolvePositive(site.context, written, 'the height')
  if (height === undefined) return undefined
  return frame => {
    const along = coordinate(site, frame, at.along, frame.along, 0)
    const across = coordinate(site, frame, at.across, frame.across, isKnown(height) ? height.mm : 0)
    if (along === undefined || across === undefined) return undefined
    const missing = [along, across].flatMap(c => ('missing' in c ? [c.missing] : []))
    if (!isKnown(height) || 'missing' in along || 'missing' in across) {
      return { missing: [...missing, ...missingSizes({ height })] }
    }
    const middle = { x: 0, y: 0, [along.axis]: along.value, [across.axis]: across.value }
    return {
      kind: 'engraved-text',
      text: text.value,
      height,
      at: { x: middle.x, y: middle.y - height.mm / 2 },
      align: alignOf(frame, at),
    }
  }
}

function alignOf(frame: FaceFrame, { along }: Drawing<'text'>['at']): EngravedText['align'] {
  if (along?.kind !== 'from-side') return 'middle'
  return frame.ruler(along.side).sign === 1 ? 'start' : 'end'
}

/** A line drawing where its own points put it, or with the near sides of the rectangle round it where the plan puts them. */
function linesOn(
  site: Site,
  { lines, at }: Drawing<'lines'>,
): Made<{ readonly kind: 'engraved-lines'; readonly paths: readonly Contour[] }> | undefined {
  const resolved = lines.map(line =>
    line.map(({ x, y }) => ({ x: resolveDistance(site.context, x), y: resolveDistance(site.context, y) })),
  )
  const points = resolved.flat().flatMap(({ x, y }): readonly Resolved[] => [x, y])
  if (points.some(p => p === undefined)) return undefined
  if (points.some(p => p === 'unknown'))
    return () => ({ missing: [{ kind: 'size', name: 'points of the drawing' }] })
  const paths: Contour[] = []
  for (const [i, line] of resolved.entries()) {
    const path = pathThrough(line.map(({ x, y }) => ({ x: (x as Size).mm, y: (y as Size).mm })))
    if (path === undefined) {
      reportNoLine(site, lines[i]!)
      return undefined
    }
    paths.push(path)
  }
  const { left, right, bottom, top } = boundsOfContours(paths)
  return frame => {
    if (at === undefined) return { kind: 'engraved-lines', paths }
    const placed = place(site, frame, at, { along: right - left, across: top - bottom })
    if (placed === undefined || 'missing' in placed) return placed
    const move = shift(placed.at.x - (left + right) / 2, placed.at.y - (bottom + top) / 2)
    return { kind: 'engraved-lines', paths: paths.map(path => transformContour(path, move)) }
  }
}

/** From point to point; points that stand on each other count once, and one place alone is no line. */
function pathThrough(points: readonly Point[]): Contour | undefined {
  const apart = points.filter((p, i) => i === 0 || distance(points[i - 1]!, p) > coincident)
  const [first, last] = [apart[0], apart.at(-1)]
  if (first === undefined || last === undefined || apart.length < 2) return undefined
  const comesBack = apart.length > 3 && distance(first, last) <= coincident
  return comesBack ? polygon(apart.slice(0, -1)) : polyline(apart)
}

function reportNoLine({ context }: Site, points: readonly DrawnPoint[]): void {
  context.report({
    rule: 'curve-impossible',
    severity: 'error',
    places: [{ source: points[1]!.source }],
    facts: { points: { value: points.length, unit: 'count' } },
  })
}
