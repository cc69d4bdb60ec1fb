import type { FaceName } from '../../finding/face-name.ts'
import { apply } from '../../geometry/shape/matrix.ts'
import type { Point } from '../../geometry/shape/point.ts'
import { type Bore, type BoreFeature, isBore, isPlaced } from '../../model/feature.ts'
import { faceOf, type Part, type Solid } from '../../model/part.ts'
import { coincident } from '../../number/tolerance.ts'
import { movedBore } from '../moved-bore.ts'
import { type FenceFrame, fenceFrame } from './fence-frame.ts'

/** A hole as the fence sees it: its bore in the strip's millimetres, and its distance from the reference end. */
export type FencedHole = { readonly feature: BoreFeature; readonly bore: Bore; readonly distance: number }

/** The holes of one face that are bored with a setting of the fence; distances ascend. */
export type FencedFace = {
  readonly frame: FenceFrame
  readonly holes: readonly [FencedHole, ...FencedHole[]]
}

/** Holes that are bored with one setting of the fence: on one face, or on both ends of a part. */
export type FenceSetting = {
  /** From the fence to the bit's centre, in millimetres. */
  readonly fence: number
  readonly faces: readonly [FencedFace, ...FencedFace[]]
}

/**
 * The settings of the fence that a part is bored with: one for every row, in which single holes at the same distance
 * from the same edge join, and one for two or more single holes that share a distance. Of a grid every line is one,
 * in the direction that has fewer of them. Holes on both ends that share a distance share the setting.
 *
 * @param alone tells the single holes that get a setting all the same
 */
export function fenceSettings(
  part: Part,
  solid: Solid,
  alone: (feature: BoreFeature) => boolean = () => false,
): readonly FenceSetting[] {
  const bored = solid.features.filter(isPlaced).filter(isBore)
  const place = new Map(bored.map((feature, i) => [feature, i]))
  return [...new Set(bored.map(benchOf))]
    .flatMap(bench =>
      linesOf(
        framesOf(part, solid),
        bored.filter(f => benchOf(f) === bench),
        alone,
      ),
    )
    .map(line => ({ line, first: Math.min(...line.holes.map(({ feature }) => place.get(feature)!)) }))
    .sort((a, b) => a.first - b.first)
    .map(({ line }) => settingOf(line))
}

/** Both ends are bored at one fence; every other face by itself. */
function benchOf({ face }: BoreFeature): FaceName | 'ends' {
  return face === 'left' || face === 'right' ? 'ends' : face
}

/** A hole, and the frame in which it would be bored in one direction of its face. */
type Seen = { readonly feature: BoreFeature; readonly frame: FenceFrame }

/** Holes in line along a fence, before they are in order. */
type Line = { readonly first: Seen; readonly fence: number; readonly holes: Seen[] }

type Running = FenceFrame['running']
type Frames = (feature: BoreFeature, running: Running) => Seen | undefined

function framesOf(part: Part, solid: Solid): Frames {
  const made = new Map<string, FenceFrame | undefined>()
  return (feature, running) => {
    const key = `${running} ${feature.face}`
    if (!made.has(key)) made.set(key, fenceFrame(part, solid, faceOf(solid, feature.face), running))
    const frame = made.get(key)
    return frame && { feature, frame }
  }
}

function linesOf(
  frames: Frames,
  bored: readonly BoreFeature[],
  alone: (feature: BoreFeature) => boolean,
): readonly Line[] {
  const lines: Line[] = []
  const inPattern = new Set<BoreFeature>()
  for (const pattern of patternsOf(bored)) {
    const running = directionOf(pattern)
    for (const feature of pattern) {
      const seen = frames(feature, running)
      if (seen === undefined) continue
      inPattern.add(feature)
      join(lines, seen)
    }
  }
  const single: readonly BoreFeature[] = bored.filter(feature => {
    if (inPattern.has(feature) || feature.row?.pattern === 'circle') return false
    const onLine = directions
      .flatMap(running => frames(feature, running) ?? [])
      .find(seen => lines.some(line => isOn(line, seen)))
    if (onLine !== undefined) join(lines, onLine)
    return onLine === undefined
  })
  const shared = directions.flatMap(running => inLine(single.flatMap(f => frames(f, running) ?? [])))
  return [...lines, ...mostAtOnce(shared, alone)]
}

/** Single holes in all the lines that they could be bored in. */
function inLine(holes: readonly Seen[]): readonly Line[] {
  const lines: Line[] = []
  const sorted = holes
    .map(seen => ({ seen, lean: leanOf(seen.feature), fence: centreOf(seen).y }))
    .sort((a, b) => (a.lean < b.lean ? -1 : a.lean > b.lean ? 1 : a.fence - b.fence))
  for (const { seen, fence } of sorted) {
    const last = lines.at(-1)
    if (last !== undefined && isOn(last, seen)) last.holes.push(seen)
    else lines.push({ first: seen, fence, holes: [seen] })
  }
  return lines
}

/** Takes the line with the most holes, then of what is left that with the most, until what is left stands alone. */
function mostAtOnce(lines: readonly Line[], alone: (feature: BoreFeature) => boolean): readonly Line[] {
  const taken: Line[] = []
  const served = new Set<BoreFeature>()
  let open = lines
  for (;;) {
    open = open
      .map(line => ({ ...line, holes: line.holes.filter(({ feature }) => !served.has(feature)) }))
      .filter(({ holes }) => holes.length > 1 || holes.some(({ feature }) => alone(feature)))
    const [first, ...others] = open
    if (first === undefined) return taken
    const best = others.reduce((a, b) => (isBetter(b, a) ? b : a), first)
    for (const { feature } of best.holes) served.add(feature)
    taken.push(best)
  }
}

const directions = ['x', 'y'] as const

/** Adds a hole to the line that it is on, or to one of its own. */
function join(lines: Line[], seen: Seen): void {
  const known = lines.find(line => isOn(line, seen))
  if (known === undefined) lines.push({ first: seen, fence: centreOf(seen).y, holes: [seen] })
  else known.holes.push(seen)
}

/** Whether a hole is bored with the same setting: the same edge at the fence, as far from it, and tilted alike. */
function isOn({ first, fence }: Line, seen: Seen): boolean {
  return (
    first.frame.running === seen.frame.running &&
    first.frame.fence === seen.frame.fence &&
    alike(fence, centreOf(seen).y) &&
    sameLean(first.feature, seen.feature)
  )
}

function centreOf({ frame, feature }: Seen): Point {
  return apply(frame.toStrip, feature.shape.centre)
}

/** On the two ends the same lean is another tilt of the table. */
function sameLean(a: BoreFeature, b: BoreFeature): boolean {
  return leanOf(a) === leanOf(b) && (a.face === b.face || a.shape.lean === undefined)
}

function leanOf({ shape: { lean } }: BoreFeature): string {
  return lean === undefined ? '' : `${lean.angle.toFixed(9)} ${lean.toward.toFixed(9)}`
}

function alike(a: number, b: number): boolean {
  return Math.abs(a - b) <= coincident
}

/** More holes with one setting, then the longer edge against the fence. */
function isBetter(a: Line, b: Line): boolean {
  if (a.holes.length !== b.holes.length) return a.holes.length > b.holes.length
  return a.first.frame.length > b.first.frame.length + coincident
}

/** The holes of each row and of each grid. */
function patternsOf(bored: readonly BoreFeature[]): readonly (readonly BoreFeature[])[] {
  const patterns = new Map<string, BoreFeature[]>()
  for (const feature of bored) {
    const { row, face } = feature
    if (row === undefined || row.pattern === 'circle' || row.count < 2) continue
    const key = `${face} ${row.row}`
    const known = patterns.get(key)
    if (known === undefined) patterns.set(key, [feature])
    else known.push(feature)
  }
  return [...patterns.values()]
}

/** The direction in which a row runs, or a grid has the fewest lines. */
function directionOf(pattern: readonly BoreFeature[]): Running {
  const distinct = (axis: 'x' | 'y'): number => {
    const at = pattern.map(({ shape }) => shape.centre[axis]).sort((a, b) => a - b)
    return at.filter((value, i) => i === 0 || !alike(value, at[i - 1]!)).length
  }
  return distinct('y') <= distinct('x') ? 'x' : 'y'
}

function settingOf({ fence, holes }: Line): FenceSetting {
  const frames = [...new Set(holes.map(({ frame }) => frame))]
  const [first, ...others] = frames.map((frame): FencedFace => {
    const [nearest, ...rest] = holes
      .filter(hole => hole.frame === frame)
      .map((hole): FencedHole => {
        const bore = movedBore(frame.toStrip, hole.feature.shape)
        return { feature: hole.feature, bore, distance: bore.centre.x * frame.toward }
      })
      .sort((a, b) => a.distance - b.distance)
    if (nearest === undefined) throw new RangeError('a frame is there for its holes')
    return { frame, holes: [nearest, ...rest] }
  })
  if (first === undefined) throw new RangeError('a setting of the fence is for holes')
  return { fence, faces: [first, ...others] }
}
