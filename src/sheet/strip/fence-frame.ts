import { isSide } from '../../finding/face-name.ts'
import type { Side } from '../../finding/side.ts'
import { regionBounds } from '../../geometry/measure/bounds.ts'
import type { Bounds } from '../../geometry/shape/contour.ts'
import { apply, compose, type Matrix, quarterTurns, shift } from '../../geometry/shape/matrix.ts'
import { dot } from '../../geometry/solid/point3.ts'
import type { Face, Part, Solid } from '../../model/part.ts'
import { toPart } from '../../model/pose.ts'
import { coincident } from '../../number/tolerance.ts'
import { sideBeyond } from '../side-beyond.ts'

/** What lies at a border of a face: another side of the part, or one of the ends of a named edge. */
export type Border = Side | 'near-end' | 'far-end'

/**
 * A face as it is bored against a fence: the edge that meets the fence lies along y = 0 with the wood above it, and
 * distances run from the reference end at x = 0.
 *
 *        toward 1                         toward −1
 *     ┌──────────────────┐          ┌──────────────────┐
 *     │    ⊕      ⊕      │          │      ⊕      ⊕    │
 *     └──────────────────┘ fence    └──────────────────┘ fence
 *     0 → x                                        x ← 0
 */
export type FenceFrame = {
  readonly face: Face
  /** Which of the face's own directions the fence lies along. */
  readonly running: 'x' | 'y'
  /** From the face's own millimetres: a shift and quarter turns. */
  readonly toStrip: Matrix
  /** The side of x = 0 that the wood lies on. */
  readonly toward: 1 | -1
  /** How far the wood reaches from the reference end, and from the fence. */
  readonly length: number
  readonly breadth: number
  readonly fence: Border
  readonly reference: Border
}

type BorderAt = 'left' | 'right' | 'bottom' | 'top'

/** How often a face is turned by a quarter so that a border of it comes to lie below. */
const turnsBelow: Readonly<Record<BorderAt, number>> = { bottom: 0, right: 3, top: 2, left: 1 }

/**
 * The frame in which a face is bored along one of its directions, from the reference edges of the part: the face
 * edge, the reference end, the face side. None where the wood has no straight edge to lay against the fence.
 */
export function fenceFrame(part: Part, solid: Solid, face: Face, running: 'x' | 'y'): FenceFrame | undefined {
  const box = regionBounds(face.region)
  const borders = bordersOf(part, solid, face)
  const across = running === 'x' ? (['bottom', 'top'] as const) : (['left', 'right'] as const)
  const along = running === 'x' ? (['left', 'right'] as const) : (['bottom', 'top'] as const)
  const byReference = (at: readonly BorderAt[]): readonly BorderAt[] =>
    [...at].sort((a, b) => rank(part, borders[a]) - rank(part, borders[b]))
  const fenceAt = byReference(across).find(at => isStraight(face, box, at))
  const [referenceAt] = byReference(along)
  if (fenceAt === undefined || referenceAt === undefined) return undefined
  const turn = quarterTurns(turnsBelow[fenceAt])
  const cornerOf = (at: BorderAt): { x: number; y: number } => {
    const x = at === 'left' || at === 'right' ? box[at] : (box.left + box.right) / 2
    const y = at === 'bottom' || at === 'top' ? box[at] : (box.bottom + box.top) / 2
    return apply(turn, { x, y })
  }
  const toStrip = compose(turn, shift(-cornerOf(referenceAt).x, -cornerOf(fenceAt).y))
  const middle = apply(toStrip, { x: (box.left + box.right) / 2, y: (box.bottom + box.top) / 2 })
  const [wide, high] = [box.right - box.left, box.top - box.bottom]
  return {
    face,
    running,
    toStrip,
    toward: middle.x > 0 ? 1 : -1,
    length: running === 'x' ? wide : high,
    breadth: running === 'x' ? high : wide,
    fence: borders[fenceAt],
    reference: borders[referenceAt],
  }
}

/** What lies at each border of a face as it is seen from outside. */
function bordersOf(part: Part, solid: Solid, face: Face): Readonly<Record<BorderAt, Border>> {
  const of = (x: number, y: number): Border => {
    const side = sideBeyond(solid, face.pose, x, y)
    if (side === undefined) throw new RangeError(`nothing lies beside ${face.id}`)
    return side
  }
  if (isSide(face.id)) return { left: of(-1, 0), right: of(1, 0), bottom: of(0, -1), top: of(0, 1) }
  const startsNear = nearer(part, solid.faces, face)
  const ends = startsNear ? (['near-end', 'far-end'] as const) : (['far-end', 'near-end'] as const)
  return { left: ends[0], right: ends[1], bottom: of(0, -1), top: of(0, 1) }
}

/** Whether a named edge begins at its end nearer to the part's reference end, or on a tie to the face edge. */
function nearer(part: Part, faces: Solid['faces'], { pose, region }: Face): boolean {
  const { left, right } = regionBounds(region)
  const from = toPart(pose, { x: left, y: 0 })
  const to = toPart(pose, { x: right, y: 0 })
  const inward = (side: Side): number =>
    dot({ x: to.x - from.x, y: to.y - from.y, z: 0 }, faces[side].pose.out)
  const fromEnd = inward(part.referenceEnd)
  return Math.abs(fromEnd) > coincident ? fromEnd < 0 : inward(part.faceEdge) < 0
}

/** Reference sides come first. */
function rank({ faceEdge, referenceEnd }: Part, border: Border): number {
  return border === 'front' || border === faceEdge || border === referenceEnd || border === 'near-end' ? 0 : 1
}

/** Whether wood lies straight along a border, for long enough to be held against a fence. */
function isStraight({ region }: Face, box: Bounds, at: BorderAt): boolean {
  const upright = at === 'left' || at === 'right'
  const whole = upright ? box.top - box.bottom : box.right - box.left
  const lies = region.outer.segments.reduce((sum, { kind, from, to }) => {
    const axis = upright ? 'x' : 'y'
    const on = Math.abs(from[axis] - box[at]) <= coincident && Math.abs(to[axis] - box[at]) <= coincident
    return kind === 'line' && on ? sum + Math.hypot(to.x - from.x, to.y - from.y) : sum
  }, 0)
  return lies >= whole * straightEnough
}

/** A shorter stretch than this share of the whole edge does not keep a piece from turning. */
const straightEnough = 0.3
