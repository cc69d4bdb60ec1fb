import { circle } from '../../../src/geometry/shape/circle.ts'
import type { Contour, Region } from '../../../src/geometry/shape/contour.ts'
import type { Point } from '../../../src/geometry/shape/point.ts'
import { polygon } from '../../../src/geometry/shape/polygon.ts'
import { bulgeChain } from './bulge.ts'
import { pick, whole } from './random.ts'

/**
 * A closed outline around the origin with corners at rising angles and an edge between each two that is a line
 * or bends either way. It can cross itself where edges bend far; the caller drops those.
 *
 * @param bend the greatest bulge; 0 for lines alone
 */
export function roundaboutOutline(random: () => number, corners: number, bend: number): Contour {
  const points = Array.from({ length: corners }, (_, i): Point => {
    const angle = ((i + 0.8 * random()) * 2 * Math.PI) / corners
    const radius = 4 + 16 * random()
    return { x: radius * Math.cos(angle), y: radius * Math.sin(angle) }
  })
  const bulges = points.map(() => (random() < 0.4 ? 0 : bend * (2 * random() - 1)))
  return { segments: bulgeChain(points, bulges, true), closed: true }
}

/**
 * The outline of a random heap of unit cells of a grid, all joined side to side: right angles, equal widths and
 * edges in one line everywhere. Holes may occur and are returned; cells touching at a corner alone are avoided.
 */
export function cellRegion(random: () => number, size: number, cell: number): Region {
  const taken = new Set<string>(['0,0'])
  const key = (x: number, y: number): string => `${x},${y}`
  const cells: [number, number][] = [[0, 0]]
  while (cells.length < size) {
    const [x, y] = pick(random, cells)
    const [dx, dy] = pick(random, [
      [1, 0],
      [-1, 0],
      [0, 1],
      [0, -1],
    ] as const)
    const at = key(x + dx, y + dy)
    if (taken.has(at)) continue
    taken.add(at)
    cells.push([x + dx, y + dy])
  }
  fillCornerContacts(taken, cells, key)
  return traceCells(taken, cells, cell)
}

/** Adds a cell wherever two touch at a corner alone, until none do. */
function fillCornerContacts(
  taken: Set<string>,
  cells: [number, number][],
  key: (x: number, y: number) => string,
): void {
  for (let i = 0; i < cells.length; i++) {
    const [x, y] = cells[i]!
    for (const [dx, dy] of [
      [1, 1],
      [1, -1],
      [-1, 1],
      [-1, -1],
    ] as const) {
      if (!taken.has(key(x + dx, y + dy)) || taken.has(key(x + dx, y)) || taken.has(key(x, y + dy))) continue
      taken.add(key(x + dx, y))
      cells.push([x + dx, y])
    }
  }
}

function traceCells(taken: ReadonlySet<string>, cells: readonly [number, number][], cell: number): Region {
  // sides with the heap on their left, by their first corner: each corner has one, for no two cells touch at one
  const sides = new Map<string, [number, number]>()
  for (const [x, y] of cells) {
    const has = (dx: number, dy: number): boolean => taken.has(`${x + dx},${y + dy}`)
    if (!has(0, -1)) sides.set(`${x},${y}`, [x + 1, y])
    if (!has(1, 0)) sides.set(`${x + 1},${y}`, [x + 1, y + 1])
    if (!has(0, 1)) sides.set(`${x + 1},${y + 1}`, [x, y + 1])
    if (!has(-1, 0)) sides.set(`${x},${y + 1}`, [x, y])
  }
  const rings: { contour: Contour; area: number }[] = []
  while (sides.size > 0) {
    const corners: [number, number][] = []
    let at = [...sides.keys()][0]!
    for (let next = sides.get(at); next !== undefined; next = sides.get(at)) {
      sides.delete(at)
      corners.push(next)
      at = `${next[0]},${next[1]}`
    }
    const turns = corners.filter((c, i) => {
      const a = corners[(i + corners.length - 1) % corners.length]!
      const b = corners[(i + 1) % corners.length]!
      return (c[0] - a[0]) * (b[1] - c[1]) !== (c[1] - a[1]) * (b[0] - c[0])
    })
    const area = turns.reduce((sum, c, i) => {
      const d = turns[(i + 1) % turns.length]!
      return sum + c[0] * d[1] - c[1] * d[0]
    }, 0)
    rings.push({ contour: polygon(turns.map(([x, y]) => ({ x: x * cell, y: y * cell }))), area })
  }
  return {
    outer: rings.find(r => r.area > 0)!.contour,
    holes: rings.filter(r => r.area < 0).map(r => r.contour),
  }
}

/** A rectangle with rounded corners and round holes, all sizes whole numbers: widths, radii and gaps coincide. */
export function plate(random: () => number): Region {
  const width = whole(random, 8, 30)
  const height = whole(random, 6, 20)
  const radii = [0, 0, 0, 0].map(() => whole(random, 0, 3))
  const corner = [
    { x: 0, y: 0, dx: 1, dy: 0 },
    { x: width, y: 0, dx: 0, dy: 1 },
    { x: width, y: height, dx: -1, dy: 0 },
    { x: 0, y: height, dx: 0, dy: -1 },
  ]
  const points: Point[] = []
  const bulges: number[] = []
  corner.forEach((c, i) => {
    const r = radii[i]!
    if (r > 0) {
      // a corner runs from the side before, which arrives along the direction turned back by a quarter
      points.push({ x: c.x - r * c.dy, y: c.y + r * c.dx })
      bulges.push(Math.tan(Math.PI / 8))
    }
    points.push({ x: c.x + r * c.dx, y: c.y + r * c.dy })
    bulges.push(0)
  })
  const holes: Contour[] = []
  for (let x = 4; x < width - 3; x += whole(random, 4, 8)) {
    if (random() < 0.6)
      holes.push(circle({ x, y: whole(random, 3, height - 3) }, pick(random, [0.5, 1, 1.5])))
  }
  return { outer: { segments: bulgeChain(points, bulges, true), closed: true }, holes }
}

/** Two arcs from one point to another: a lens, a crescent, or a crescent with horns that end tangent. */
export function twoArcs(random: () => number): Region {
  const length = 4 + 12 * random()
  const first = pick(random, [0.2, 0.5, 1, 1.8, 0.3 + random()])
  const second = pick(random, [0.1, 0.4, -0.1, first * -0.6, 0, 1])
  const points = [
    { x: 0, y: 0 },
    { x: length, y: length * random() },
  ]
  return { outer: { segments: bulgeChain(points, [first, second], true), closed: true }, holes: [] }
}
