import { regionBounds } from '../../../src/geometry/measure/bounds.ts'
import type { Point } from '../../../src/geometry/shape/point.ts'
import type { Point3 } from '../../../src/model/pose.ts'
import { onPaper, type Panel } from '../../../src/sheet/wrap/net.ts'

/**
 * Where a point of a net comes to lie when the net is folded round the block: the paper lies flat on the front, at the
 * height `front`, and everything that hangs on it is turned down by a right angle at every fold, the farthest first.
 */
export function foldedUp(panels: readonly Panel[], panel: Panel, at: Point, front: number): Point3 {
  let place: Point3 = { x: at.x, y: at.y, z: 0 }
  let one: Panel | undefined = panel
  while (one?.fold !== undefined) {
    const { on, from, to }: NonNullable<Panel['fold']> = one.fold
    place = turnedDown(place, from, to, middleOf(one))
    one = panels.find(({ face }) => face.id === on)
  }
  return { ...place, z: place.z + front }
}

function middleOf(panel: Panel): Point {
  const { left, right, bottom, top } = regionBounds(onPaper(panel))
  return { x: (left + right) / 2, y: (bottom + top) / 2 }
}

/** Turns a place by a right angle about a line in the plane z = 0, so that the side that `beyond` is on goes down. */
function turnedDown(p: Point3, from: Point, to: Point, beyond: Point): Point3 {
  const length = Math.hypot(to.x - from.x, to.y - from.y)
  const along = { x: (to.x - from.x) / length, y: (to.y - from.y) / length }
  const leftward = { x: -along.y, y: along.x }
  const side = Math.sign((beyond.x - from.x) * leftward.x + (beyond.y - from.y) * leftward.y)
  const out = { x: leftward.x * side, y: leftward.y * side }
  const forth = (p.x - from.x) * along.x + (p.y - from.y) * along.y
  const away = (p.x - from.x) * out.x + (p.y - from.y) * out.y
  // what was so far out now hangs so far down, and what was so far above the paper stands so far out
  return { x: from.x + along.x * forth + out.x * p.z, y: from.y + along.y * forth + out.y * p.z, z: -away }
}
