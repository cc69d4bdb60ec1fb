import type { FaceName } from '../../finding/face-name.ts'
import type { Side } from '../../finding/side.ts'
import { intersection } from '../../geometry/boolean/index.ts'
import { regionArea } from '../../geometry/measure/area.ts'
import { boundsOfRegions, regionBounds } from '../../geometry/measure/bounds.ts'
import type { Region } from '../../geometry/shape/contour.ts'
import { apply, compose, type Matrix, shift } from '../../geometry/shape/matrix.ts'
import type { Point } from '../../geometry/shape/point.ts'
import { transformRegion } from '../../geometry/shape/transform.ts'
import { onPlane, type Point3, toPart } from '../../model/pose.ts'
import { coincident, printable } from '../../number/tolerance.ts'
import type { Block, BlockFace } from './block.ts'

/** A face on paper. `toPaper` takes its own millimetres there, a shift with a turn. */
export type Panel = {
  readonly face: BlockFace
  readonly toPaper: Matrix
  /** Where it hangs on another panel: that one, and the fold between the two. */
  readonly fold?: { readonly on: FaceName; readonly from: Point; readonly to: Point }
}

/** What a side of a block hangs on in a net; the back hangs on the top, so that a long block makes a short net. */
const hangsOn: Readonly<Record<Exclude<Side, 'front'>, Side>> = {
  top: 'front',
  bottom: 'front',
  left: 'front',
  right: 'front',
  back: 'top',
}

/**
 * One continuous net: the front, and what is wanted of the other faces, each folded back from the one that it hangs on.
 * Faces between are there too. What would lie over another panel, or hangs on nothing, stands apart.
 */
export function netOf(block: Block, wanted: readonly FaceName[], isBox: boolean): readonly Panel[] {
  const panels: Panel[] = [{ face: block.face('front'), toPaper: shift(0, 0) }]
  const loose: FaceName[] = []
  const hang = (id: FaceName): void => {
    if (panels.some(({ face }) => face.id === id)) return
    const on = parentOf(id, isBox)
    if (on === undefined) {
      loose.push(id)
      return
    }
    hang(on)
    const parent = panels.find(({ face }) => face.id === on)
    const panel = parent && hinged(block.face(id), parent)
    if (panel === undefined || panels.some(other => overlap(other, panel))) loose.push(id)
    else panels.push(panel)
  }
  for (const id of wanted) if (id !== 'front') hang(id)
  return [...panels, ...inRow(loose.map(block.face), 0, boundsOfPanels(panels).bottom - apart)]
}

function parentOf(id: FaceName, isBox: boolean): FaceName | undefined {
  if (id.startsWith('edge:')) return 'front'
  return isBox && id !== 'front' ? hangsOn[id as Exclude<Side, 'front'>] : undefined
}

/** A face turned up about the edge that it shares with a panel, so that both are seen from outside side by side. */
function hinged(face: BlockFace, parent: Panel): Panel | undefined {
  const shared = sharedEdge(face, parent.face)
  if (shared === undefined) return undefined
  const [from, to] = shared.map(p => apply(parent.toPaper, onPlane(parent.face.pose, p))) as [Point, Point]
  const [a, b] = shared.map(p => onPlane(face.pose, p)) as [Point, Point]
  const [u, v] = [
    { x: b.x - a.x, y: b.y - a.y },
    { x: to.x - from.x, y: to.y - from.y },
  ]
  const size = Math.hypot(u.x, u.y) * Math.hypot(v.x, v.y)
  const cos = (u.x * v.x + u.y * v.y) / size
  const sin = (u.x * v.y - u.y * v.x) / size
  const turned: Matrix = { a: cos, b: sin, c: -sin, d: cos, e: 0, f: 0 }
  const start = apply(turned, a)
  return {
    face,
    toPaper: compose(turned, shift(from.x - start.x, from.y - start.y)),
    fold: { on: parent.face.id, from, to },
  }
}

/** The edge of a face that lies in the plane of another, as two places in the part. */
function sharedEdge({ pose, region }: BlockFace, other: BlockFace): readonly [Point3, Point3] | undefined {
  const { left, right, bottom, top } = regionBounds(region)
  const corners = [
    { x: left, y: bottom },
    { x: right, y: bottom },
    { x: right, y: top },
    { x: left, y: top },
  ].map(corner => toPart(pose, corner))
  const above = ({ x, y, z }: Point3): number => {
    const { origin, out } = other.pose
    return Math.abs((x - origin.x) * out.x + (y - origin.y) * out.y + (z - origin.z) * out.z)
  }
  const edges = corners.map((corner, i) => [corner, corners[(i + 1) % 4]!] as const)
  return edges.find(ends => ends.every(end => above(end) <= coincident))
}

/** Neighbours share an edge, which has no area but for rounding: less than what prints, over a millimetre. */
function overlap(a: Panel, b: Panel): boolean {
  const shared = intersection([onPaper(a)], [onPaper(b)])
  return shared.ok && shared.value.some(region => regionArea(region) > printable)
}

/** A panel as it lies on the paper. */
export function onPaper({ face, toPaper }: Panel): Region {
  return transformRegion(face.region, toPaper)
}

/** The folds between panels, as they lie on the paper. */
export function foldsOf(panels: readonly Panel[]): readonly (readonly [Point, Point])[] {
  return panels.flatMap(({ fold }) => (fold === undefined ? [] : [[fold.from, fold.to] as const]))
}

export function boundsOfPanels(panels: readonly Panel[]) {
  return boundsOfRegions(panels.map(onPaper))
}

/** White between panels, for the words along their borders. */
const apart = 14

function namedEdges(wanted: readonly FaceName[]): readonly FaceName[] {
  return wanted.filter(id => id.startsWith('edge:'))
}

/** Faces one below the other from an upper left corner. */
function inColumn(faces: readonly BlockFace[], from: Point): readonly Panel[] {
  let { y } = from
  return faces.map(face => {
    const box = regionBounds(face.region)
    const panel: Panel = { face, toPaper: shift(from.x - box.left, y - box.top) }
    y -= box.top - box.bottom + apart
    return panel
  })
}

/** Faces side by side below a line, as they are seen from outside. */
function inRow(faces: readonly BlockFace[], left: number, top: number): readonly Panel[] {
  let x = left
  return faces.map(face => {
    const box = regionBounds(face.region)
    const panel: Panel = { face, toPaper: shift(x - box.left, top - box.top) }
    x += box.right - box.left + apart
    return panel
  })
}

/** The same panels in two columns, for paper that is too short for one above the other. */
export function panelsInColumns(block: Block, wanted: readonly FaceName[]): readonly Panel[] {
  const ends = wanted.filter(id => id === 'left' || id === 'right')
  const long = [
    ...(['top', 'front', 'bottom', 'back'] as const).filter(id => wanted.includes(id)),
    ...namedEdges(wanted),
  ]
  const half = Math.ceil((long.length + (ends.length > 0 ? 1 : 0)) / 2)
  const left = inColumn(long.slice(0, half).map(block.face), { x: 0, y: 0 })
  // a block may have holes in its ends alone
  const x = left.length > 0 ? boundsOfPanels(left).right + apart : 0
  const right = inColumn(long.slice(half).map(block.face), { x, y: 0 })
  const below = right.length > 0 ? boundsOfPanels(right).bottom - apart : 0
  return [...left, ...right, ...inRow(ends.map(block.face), x, below)]
}

/**
 * A panel for each face, as they would lie about the front: the ends beside it, top and bottom above and below it, the
 * back and edges with names under these. Each by itself, with white between.
 */
export function panelsOf(block: Block, wanted: readonly FaceName[]): readonly Panel[] {
  const column = (['top', 'front', 'bottom', 'back'] as const).filter(id => wanted.includes(id))
  const panels = [...inColumn([...column, ...namedEdges(wanted)].map(block.face), { x: 0, y: 0 })]
  const beside = panels.find(({ face }) => face.id === 'front') ?? panels[0]
  const box = beside === undefined ? { left: 0, right: 0, top: 0 } : regionBounds(onPaper(beside))
  const widest = Math.max(box.right, ...panels.map(panel => regionBounds(onPaper(panel)).right))
  for (const id of ['left', 'right'] as const) {
    if (!wanted.includes(id)) continue
    const face = block.face(id)
    const own = regionBounds(face.region)
    // the end that lies at the left of the piece stands at the left, in either hand
    const atLeft = face.pose.out.x < 0
    const x = atLeft ? -apart - own.right : widest + apart - own.left
    panels.push({ face, toPaper: shift(x, box.top - own.top) })
  }
  return panels
}
