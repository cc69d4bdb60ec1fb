import { coincident } from '../../number/tolerance.ts'
import { segmentLength } from '../measure/length.ts'
import type { Contour } from '../shape/contour.ts'
import { distance, type Point } from '../shape/point.ts'
import { reverseSegment } from '../shape/reverse.ts'
import { line, type Segment, withEnds } from '../shape/segment.ts'

/**
 * What mending did. `moved`: the end of a line was put onto its neighbour. `bridged`: a short line was put
 * between two arcs, which cannot be moved without changing their circles. `dropped`: a segment without length
 * was left out. `turned`: an open path was run the other way to follow on another. `joined`: two open paths
 * became one. `closed`: an open path became a closed contour. Contours and segments are counted as given.
 */
export type Repair =
  | {
      readonly kind: 'moved' | 'bridged'
      readonly contour: number
      readonly from: Point
      readonly to: Point
      readonly size: number
    }
  | { readonly kind: 'dropped'; readonly contour: number; readonly segment: number; readonly at: Point }
  | { readonly kind: 'turned' | 'closed'; readonly contour: number }
  | { readonly kind: 'joined'; readonly contour: number; readonly to: number }

/** The contours mended, and everything that was done to them. */
export type Mended = { readonly contours: readonly Contour[]; readonly repairs: readonly Repair[] }

/**
 * Closes gaps no wider than `maxGap` (mm): between the segments of a contour, between open paths whose ends are
 * that near, turning paths where that is needed, and between the ends of one path, which then is closed. Of
 * several ends in reach the nearest is taken. Gaps within `coincident` are closed without mention: they are
 * none. Wider gaps stay as they are, and a contour that was closed across one becomes an open path.
 */
export function mend(contours: readonly Contour[], maxGap: number): Mended {
  const repairs: Repair[] = []
  const reach = Math.max(maxGap, coincident)
  const paths = contours.flatMap((contour, number) => runs(contour, number, reach, repairs))
  return { contours: joinPaths(paths, reach, repairs).map(p => finish(p, repairs)), repairs }
}

type Path = { number: number; segments: Segment[]; closed: boolean }

const startOf = (p: Path): Point => p.segments[0]!.from
const endOf = (p: Path): Point => p.segments.at(-1)!.to

/** A contour without its lengthless segments, parted where a gap is too wide, other gaps closed. */
function runs(contour: Contour, number: number, reach: number, repairs: Repair[]): Path[] {
  const kept = contour.segments.filter((s, segment) => {
    if (segmentLength(s) > coincident) return true
    repairs.push({ kind: 'dropped', contour: number, segment, at: s.from })
    return false
  })
  const paths: Path[] = []
  for (const s of kept) {
    const path = paths.at(-1)
    if (path !== undefined && distance(endOf(path), s.from) <= reach) follow(path, [s], repairs)
    else paths.push({ number, segments: [s], closed: false })
  }
  const [first, last] = [paths[0], paths.at(-1)]
  if (!contour.closed || first === undefined || last === undefined) return paths
  if (distance(endOf(last), startOf(first)) > reach) return paths
  if (first === last) first.closed = true
  else {
    // the contour starts in the middle of a run
    follow(last, first.segments, repairs)
    paths.shift()
  }
  return paths
}

/** Joins open paths end to end, the nearest ends first; an end is joined once. */
function joinPaths(paths: readonly Path[], reach: number, repairs: Repair[]): Path[] {
  const partner = partners(paths, reach)
  const used = new Set<Path>()
  const walk = (first: number, turned: boolean): Path => {
    const joined: Path = { number: paths[first]!.number, segments: [], closed: paths[first]!.closed }
    for (let p = first, back = turned; ; ) {
      const path = paths[p]!
      used.add(path)
      if (back) repairs.push({ kind: 'turned', contour: path.number })
      const segments = back ? path.segments.toReversed().map(reverseSegment) : path.segments
      if (joined.segments.length === 0) joined.segments = [...segments]
      else {
        follow(joined, segments, repairs)
        repairs.push({ kind: 'joined', contour: path.number, to: joined.number })
      }
      const on = partner.get(2 * p + (back ? 0 : 1))
      if (on === undefined) return joined
      p = on >> 1
      back = (on & 1) === 1
      if (p !== first) continue
      repairs.push({ kind: 'closed', contour: joined.number })
      joined.closed = true
      return joined
    }
  }
  const joined: Path[] = []
  const walkFrom = (starts: (p: number) => boolean, turned: boolean) => {
    for (let p = 0; p < paths.length; p++) {
      if (!used.has(paths[p]!) && starts(p)) joined.push(walk(p, turned))
    }
  }
  // chains from where they start, then those with two ends and no start, then the rings that are left
  walkFrom(p => !partner.has(2 * p), false)
  walkFrom(p => !partner.has(2 * p + 1), true)
  walkFrom(() => true, false)
  return joined
}

/** For each joined end (2p the start of path p, 2p + 1 its end) the one it is joined to. */
function partners(paths: readonly Path[], reach: number): Map<number, number> {
  const ends = paths.flatMap((path, p) =>
    path.closed
      ? []
      : [
          { end: 2 * p, at: startOf(path) },
          { end: 2 * p + 1, at: endOf(path) },
        ],
  )
  const pairs: { a: number; b: number; size: number }[] = []
  ends.forEach((e, k) => {
    for (const f of ends.slice(k + 1)) {
      const size = distance(e.at, f.at)
      const alone = e.end >> 1 === f.end >> 1 && paths[e.end >> 1]!.segments.length < 2
      if (size <= reach && !alone) pairs.push({ a: e.end, b: f.end, size })
    }
  })
  pairs.sort((p, q) => p.size - q.size || p.a - q.a || p.b - q.b)
  const partner = new Map<number, number>()
  for (const { a, b } of pairs) {
    if (partner.has(a) || partner.has(b)) continue
    partner.set(a, b)
    partner.set(b, a)
  }
  return partner
}

/** Puts segments behind a path, the gap between them closed. */
function follow(path: Path, segments: readonly Segment[], repairs: Repair[]): void {
  const [first, ...rest] = segments as [Segment, ...Segment[]]
  const last = path.segments.at(-1)!
  const size = distance(last.to, first.from)
  const note = (kind: 'moved' | 'bridged', from: Point, to: Point) => {
    if (size > coincident) repairs.push({ kind, contour: path.number, from, to, size })
  }
  if (last.to === first.from) path.segments.push(first)
  else if (last.kind === 'line') {
    note('moved', last.to, first.from)
    path.segments[path.segments.length - 1] = withEnds(last, last.from, first.from)
    path.segments.push(first)
  } else if (first.kind === 'line' || size <= coincident) {
    note('moved', first.from, last.to)
    path.segments.push(withEnds(first, last.to, first.to))
  } else {
    note('bridged', last.to, first.from)
    path.segments.push(line(last.to, first.from), first)
  }
  for (const s of rest) path.segments.push(s)
}

/** A path as a contour, a closed one closed at its start as well. */
function finish(path: Path, repairs: Repair[]): Contour {
  const { segments, number, closed } = path
  if (!closed || segments.length < 2) return { segments, closed }
  const [first, ...rest] = segments as [Segment, ...Segment[]]
  const round: Path = { number, segments: rest, closed }
  follow(round, [first], repairs)
  const all = round.segments
  // the first segment, now last, may have got a new start: bring it back to the front
  return { segments: [all.at(-1)!, ...all.slice(0, -1)], closed: true }
}
