import { orientation } from '../../number/predicates.ts'
import { meetCircles, sameCircle } from '../intersect/circle-circle.ts'
import { meetLineCircle } from '../intersect/line-circle.ts'
import { type BoxTree, visitPairs } from './box-tree.ts'
import { float64Array, int32Array } from './memory.ts'
import { addVertex, grown, type Pack } from './pack.ts'
import { createGroups, type Groups, join } from './vertices.ts'

/** Vertices that lie on a segment between its ends, in no order, and the vertices that were found to be one. */
export type Crossings = {
  count: number
  segment: Int32Array
  vertex: Int32Array
  readonly groups: Groups
  /** Whether anything was snapped by more than rounding, so that edges have moved, or a crossing may be far off a third edge. */
  moved: boolean
}

/**
 * What rounding alone puts between points of this size that were meant to be one, in mm. What is farther off was
 * not meant to be, and where shallow curves are involved even very little of that has far-reaching effects.
 */
export function rounding(x: number, y: number): number {
  return 4 * Number.EPSILON * (Math.abs(x) + Math.abs(y))
}

/** By how many times rounding a crossing may be off across the segments. */
const shallow = 16

/**
 * Finds where segments meet.
 *
 * An end of one segment within `snap` of another is a vertex of both; two ends that near are one vertex.
 * Only then is a crossing calculated, once for the pair, and it becomes a new vertex of both unless an end is
 * already there. So a crossing never stands beside an end that it should have been, and overlapping segments
 * (collinear, co-circular, or so nearly that they are within `snap` of each other) are cut at each
 * other's ends and at nothing else.
 */
export function findCrossings(pack: Pack, tree: BoxTree, snap: number): Crossings {
  const { from, to, centreX, centreY, radius, turn } = pack
  let { x, y } = pack
  const reach = snap * snap
  const meetings = float64Array(pack.memory, 4)

  let moved = false
  let count = 0
  let segment = int32Array(pack.memory, 256)
  let vertex = int32Array(pack.memory, 256)
  // of every vertex that there is room for; until all are known only ends are joined
  const groups = createGroups(pack.memory, pack.x.length)

  const cut = (s: number, v: number): void => {
    if (count === segment.length) {
      segment = grown(segment, 2 * count)
      vertex = grown(vertex, 2 * count)
    }
    segment[count] = s
    vertex[count] = v
    count++
  }

  const one = (v: number, w: number): void => {
    if (!join(groups, v, w)) return
    if (Math.abs(x[v]! - x[w]!) + Math.abs(y[v]! - y[w]!) > rounding(x[v]!, y[v]!)) moved = true
  }

  const near = (v: number, px: number, py: number): boolean => {
    const dx = x[v]! - px
    const dy = y[v]! - py
    return dx * dx + dy * dy <= reach
  }

  /** How much the tangent of a segment at a point of it runs in x and in y, for its length or its radius. */
  const tangentX = (s: number, py: number): number =>
    radius[s] === 0 ? x[to[s]!]! - x[from[s]!]! : centreY[s]! - py
  const tangentY = (s: number, px: number): number =>
    radius[s] === 0 ? y[to[s]!]! - y[from[s]!]! : px - centreX[s]!

  /**
   * Whether two segments cross at so small an angle that rounding alone may put the crossing farther than `snap` from
   * where a third segment that runs along one of them, no farther from it than rounding, crosses the other.
   */
  const isShallow = (i: number, j: number, px: number, py: number): boolean => {
    const ux = tangentX(i, py)
    const uy = tangentY(i, px)
    const vx = tangentX(j, py)
    const vy = tangentY(j, px)
    const least = shallow * rounding(px, py)
    const sine = (ux * vy - uy * vx) * snap
    return sine * sine <= least * least * (ux * ux + uy * uy) * (vx * vx + vy * vy)
  }

  const cross = (i: number, j: number, px: number, py: number): void => {
    if (isShallow(i, j, px, py)) moved = true
    const v = addVertex(pack, px, py)
    x = pack.x
    y = pack.y
    cut(i, v)
    cut(j, v)
  }

  /** Vertex v, known to lie on the endless line of segment s: cuts s there, or joins one of its ends. */
  const endOnLine = (v: number, s: number): boolean => {
    const a = from[s]!
    const b = to[s]!
    const px = x[v]!
    const py = y[v]!
    if (near(a, px, py)) one(a, v)
    else if (near(b, px, py)) one(b, v)
    else {
      const ux = x[b]! - x[a]!
      const uy = y[b]! - y[a]!
      if ((px - x[a]!) * ux + (py - y[a]!) * uy <= 0) return false
      if ((x[b]! - px) * ux + (y[b]! - py) * uy <= 0) return false
      const off = Math.abs((px - x[a]!) * uy - (py - y[a]!) * ux)
      if (off > rounding(px, py) * (Math.abs(ux) + Math.abs(uy))) moved = true
      cut(s, v)
    }
    return true
  }

  const onCircle = (v: number, s: number, within: number): boolean => {
    const dx = x[v]! - centreX[s]!
    const dy = y[v]! - centreY[s]!
    const r = radius[s]!
    return Math.abs(dx * dx + dy * dy - r * r) <= within * (2 * r + within)
  }

  /** Whether a point is seen from the centre of arc s between its ends. An arc turns at most half. */
  const withinArc = (s: number, px: number, py: number): boolean => {
    const a = from[s]!
    const b = to[s]!
    const cx = centreX[s]!
    const cy = centreY[s]!
    const vx = px - cx
    const vy = py - cy
    const t = turn[s]!
    return t * ((x[a]! - cx) * vy - (y[a]! - cy) * vx) > 0 && t * (vx * (y[b]! - cy) - vy * (x[b]! - cx)) > 0
  }

  /** Vertex v against arc s, as `endOnLine`. */
  const endOnArc = (v: number, s: number): boolean => {
    if (!onCircle(v, s, snap)) return false
    const px = x[v]!
    const py = y[v]!
    if (near(from[s]!, px, py)) one(from[s]!, v)
    else if (near(to[s]!, px, py)) one(to[s]!, v)
    else if (withinArc(s, px, py)) {
      if (!onCircle(v, s, rounding(px, py) + rounding(radius[s]!, 0))) moved = true
      cut(s, v)
    } else return false
    return true
  }

  const atAnEnd = (i: number, j: number, px: number, py: number): boolean =>
    near(from[i]!, px, py) || near(to[i]!, px, py) || near(from[j]!, px, py) || near(to[j]!, px, py)

  const lineLine = (i: number, j: number): void => {
    const a = from[i]!
    const b = to[i]!
    const c = from[j]!
    const d = to[j]!
    const ax = x[a]!
    const ay = y[a]!
    const bx = x[b]!
    const by = y[b]!
    const cx = x[c]!
    const cy = y[c]!
    const dx = x[d]!
    const dy = y[d]!
    const ux = bx - ax
    const uy = by - ay
    const slackU = snap * Math.sqrt(ux * ux + uy * uy)
    // how far the ends of one lie left of the other, times the other's length
    let atC = ux * (cy - ay) - uy * (cx - ax)
    let atD = ux * (dy - ay) - uy * (dx - ax)
    if ((atC > slackU && atD > slackU) || (atC < -slackU && atD < -slackU)) return
    const vx = dx - cx
    const vy = dy - cy
    const slackV = snap * Math.sqrt(vx * vx + vy * vy)
    let atA = vx * (ay - cy) - vy * (ax - cx)
    let atB = vx * (by - cy) - vy * (bx - cx)
    if ((atA > slackV && atB > slackV) || (atA < -slackV && atB < -slackV)) return
    const nearA = Math.abs(atA) <= slackV
    const nearB = Math.abs(atB) <= slackV
    const nearC = Math.abs(atC) <= slackU
    const nearD = Math.abs(atD) <= slackU
    const shared = a === c || a === d || b === c || b === d
    if (nearA || nearB || nearC || nearD) {
      let met = false
      if (nearC && c !== a && c !== b && endOnLine(c, i)) met = true
      if (nearD && d !== a && d !== b && endOnLine(d, i)) met = true
      if (nearA && a !== c && a !== d && endOnLine(a, j)) met = true
      if (nearB && b !== c && b !== d && endOnLine(b, j)) met = true
      if (met || shared) return
      if (nearC) atC = exactSide(pack, a, b, c)
      if (nearD) atD = exactSide(pack, a, b, d)
      if (nearA) atA = exactSide(pack, c, d, a)
      if (nearB) atB = exactSide(pack, c, d, b)
    }
    if (shared || atC > 0 === atD > 0 || atA > 0 === atB > 0) return
    const t = atC / (atC - atD)
    cross(i, j, cx + t * vx, cy + t * vy)
  }

  const lineArc = (i: number, j: number): void => {
    const a = from[i]!
    const b = to[i]!
    const p = from[j]!
    const q = to[j]!
    const ax = x[a]!
    const ay = y[a]!
    const bx = x[b]!
    const by = y[b]!
    const ux = bx - ax
    const uy = by - ay
    const lengthSquared = ux * ux + uy * uy
    if (lengthSquared === 0) return
    const cx = centreX[j]!
    const cy = centreY[j]!
    const r = radius[j]!
    const aside = ux * (cy - ay) - uy * (cx - ax)
    const far = r + 2 * snap
    if (aside * aside > far * far * lengthSquared) return
    // the powers of the line's ends: near 0 for one that is on the circle
    const powerA = (ax - cx) * (ax - cx) + (ay - cy) * (ay - cy) - r * r
    const powerB = (bx - cx) * (bx - cx) + (by - cy) * (by - cy) - r * r
    const onCircle = snap * (2 * r + snap)
    const sharesA = a === p || a === q
    const sharesB = b === p || b === q
    if (!sharesA && Math.abs(powerA) <= onCircle) endOnArc(a, j)
    if (!sharesB && Math.abs(powerB) <= onCircle) endOnArc(b, j)
    const slack = reach * lengthSquared
    if (p !== a && p !== b) {
      const atP = ux * (y[p]! - ay) - uy * (x[p]! - ax)
      if (atP * atP <= slack) endOnLine(p, i)
    }
    if (q !== a && q !== b) {
      const atQ = ux * (y[q]! - ay) - uy * (x[q]! - ax)
      if (atQ * atQ <= slack) endOnLine(q, i)
    }
    if (sharesA && meetsOnlyThere(powerA, ux * (cx - ax) + uy * (cy - ay), lengthSquared)) return
    if (sharesB && meetsOnlyThere(powerB, ux * (bx - cx) + uy * (by - cy), lengthSquared)) return
    const found = meetLineCircle(ax, ay, bx, by, cx, cy, r, snap, meetings)
    for (let k = 0; k < found; k++) {
      const px = meetings[2 * k]!
      const py = meetings[2 * k + 1]!
      const along = (px - ax) * ux + (py - ay) * uy
      if (along <= 0 || along >= lengthSquared) continue
      if (withinArc(j, px, py) && !atAnEnd(i, j, px, py)) cross(i, j, px, py)
    }
  }

  /**
   * Whether neighbours share their only point: the line leads out of the circle there, or ends well before it comes
   * out of it again.
   *
   * @param power that of the shared vertex, by which it was snapped
   * @param into how far the line leads towards the centre, times its length
   */
  const meetsOnlyThere = (power: number, into: number, lengthSquared: number): boolean =>
    into <= 0 || (into > lengthSquared && Math.abs(power) * Math.sqrt(lengthSquared) <= snap * into)

  const arcArc = (i: number, j: number): void => {
    const a = from[i]!
    const b = to[i]!
    const p = from[j]!
    const q = to[j]!
    const dx = centreX[j]! - centreX[i]!
    const dy = centreY[j]! - centreY[i]!
    const sum = radius[i]! + radius[j]! + 2 * snap
    if (dx * dx + dy * dy > sum * sum) return
    if (a !== p && a !== q) endOnArc(a, j)
    if (b !== p && b !== q) endOnArc(b, j)
    if (p !== a && p !== b) endOnArc(p, i)
    if (q !== a && q !== b) endOnArc(q, i)
    const found = meetCircles(
      centreX[i]!,
      centreY[i]!,
      radius[i]!,
      centreX[j]!,
      centreY[j]!,
      radius[j]!,
      snap,
      meetings,
    )
    if (found === sameCircle) return
    for (let k = 0; k < found; k++) {
      const px = meetings[2 * k]!
      const py = meetings[2 * k + 1]!
      if (withinArc(i, px, py) && withinArc(j, px, py) && !atAnEnd(i, j, px, py)) cross(i, j, px, py)
    }
  }

  visitPairs(tree, (i, j) => {
    if (radius[i] === 0) {
      if (radius[j] === 0) lineLine(i, j)
      else lineArc(i, j)
    } else if (radius[j] === 0) lineArc(j, i)
    else arcArc(i, j)
  })

  const known = groups.parent.length
  if (known < pack.vertexCount) groups.parent = grown(groups.parent, pack.vertexCount)
  for (let v = known; v < pack.vertexCount; v++) groups.parent[v] = v
  return { count, segment, vertex, groups, moved }
}

function exactSide(pack: Pack, a: number, b: number, c: number): number {
  const { x, y } = pack
  return orientation({ x: x[a]!, y: y[a]! }, { x: x[b]!, y: y[b]! }, { x: x[c]!, y: y[c]! })
}
