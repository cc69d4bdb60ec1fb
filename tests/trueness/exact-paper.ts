import { apply } from '../../src/geometry/shape/matrix.ts'
import type { Point } from '../../src/geometry/shape/point.ts'
import { faceOf, type Part, type Piece } from '../../src/model/part.ts'
import { toPart } from '../../src/model/pose.ts'
import type { AskedStrip } from '../../src/sheet/sheet.ts'
import { stripsOf } from '../../src/sheet/strip/strips-of.ts'
import { moved, type ReadBack, type ReadChain, type Six } from '../readback/read-back.ts'
import { perfect, type Trueness, worse } from './compare.ts'

/** A ring and a line as a strip has to have them, in the strip's own millimetres. */
export type ExactStrip = {
  readonly rings: readonly { readonly centre: Point; readonly radius: number }[]
  /** The reference end at x = 0 and the other end there. */
  readonly far: number
}

/**
 * From the planes of the wood's sides, without a look at the frames that a strip is drawn in: only which holes are on
 * it, and which sides it is measured from, are taken from there.
 */
export function exactStrip(
  part: Part,
  id: string,
  only?: AskedStrip,
): (ExactStrip & { readonly hand: Piece['hand'] }) | undefined {
  const strip = stripsOf(part, only).find(one => one.id === id)
  if (strip === undefined) return undefined
  const { solid } = strip.served.pieces[0]
  const [first] = strip.setting.faces
  const { toward } = first.frame
  const rings = strip.setting.faces.flatMap(({ frame, holes }, i) =>
    holes.flatMap(({ feature: { face, shape } }) => {
      if (shape.lean !== undefined) return []
      const place = toPart(faceOf(solid, face).pose, shape.centre)
      const from = (border: typeof frame.fence): number => {
        if (border === 'near-end' || border === 'far-end')
          return apply(frame.toStrip, shape.centre).x * frame.toward
        const { origin, out } = solid.faces[border].pose
        return (origin.x - place.x) * out.x + (origin.y - place.y) * out.y + (origin.z - place.z) * out.z
      }
      const centre = { x: toward * from(frame.reference), y: (i === 0 ? 1 : -1) * from(frame.fence) }
      return [{ centre, radius: shape.diameter.mm / 2 }]
    }),
  )
  return { rings, far: toward * first.frame.length, hand: strip.hand }
}

const ends = ({ curves }: ReadChain): readonly [Point, Point] => [curves[0]!.at(0), curves.at(-1)!.at(1)]
const apart = (a: Point, b: Point): number => Math.hypot(a.x - b.x, a.y - b.y)

/**
 * How far the centres, the fold and the ends of the ruler of a strip are off, as read from a file.
 *
 * @param placement from the strip's millimetres to those of the page
 */
export function compareStrip({ rings, far }: ExactStrip, placement: Six, { chains }: ReadBack): Trueness {
  const strokes = chains.filter(({ paint }) => paint === 'stroke')
  const found = rings.map(({ centre, radius }) => ringOff(moved(placement, centre), radius, strokes))
  const ruler = strokes.filter(c => !c.closed && c.dashes.length === 0)
  const [zero, end] = [moved(placement, { x: 0, y: 0 }), moved(placement, { x: far, y: 0 })]
  // the ruler stands at some height over the fold, its ends over those of the wood
  const along = { x: (end.x - zero.x) / Math.abs(far), y: (end.y - zero.y) / Math.abs(far) }
  const forth = (p: Point): number => (p.x - zero.x) * along.x + (p.y - zero.y) * along.y
  const beside = (p: Point): number => (p.y - zero.y) * along.x - (p.x - zero.x) * along.y
  const bars = Math.min(
    ...ruler.map(chain => {
      const [a, b] = ends(chain)
      const [low, high] = [Math.min(forth(a), forth(b)), Math.max(forth(a), forth(b))]
      return Math.max(Math.abs(low), Math.abs(high - Math.abs(far)), Math.abs(beside(a) - beside(b)))
    }),
  )
  const outline = Math.min(
    ...strokes
      .filter(c => c.dashes.length > 0 && !c.closed && apart(...ends(c)) > Math.abs(far))
      .map(c => Math.max(...ends(c).map(p => Math.abs(beside(p))))),
  )
  return [...found, { ...perfect, bars, outline }].reduce(worse, perfect)
}

const samples = Array.from({ length: 9 }, (_, i) => i / 8)

/** The ring nearest to where one should be: how far its middle and its radius are off. */
function ringOff(centre: Point, radius: number, chains: readonly ReadChain[]): Trueness {
  const offs = chains
    .filter(({ closed }) => closed)
    .map(({ curves }) => {
      const points = curves.flatMap(curve => samples.map(curve.at))
      const xs = points.map(p => p.x)
      const ys = points.map(p => p.y)
      const middle = {
        x: (Math.min(...xs) + Math.max(...xs)) / 2,
        y: (Math.min(...ys) + Math.max(...ys)) / 2,
      }
      const width = Math.max(...points.map(p => Math.abs(apart(p, middle) - radius)))
      return { ...perfect, centre: apart(middle, centre), radius: width }
    })
  return offs.reduce((a, b) => (b.centre + b.radius < a.centre + a.radius ? b : a), {
    ...perfect,
    centre: Infinity,
    radius: Infinity,
  })
}
