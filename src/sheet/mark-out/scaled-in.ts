import type { Model, Part } from '../../model/part.ts'
import type { Size } from '../../model/size.ts'
import type { Axis } from './datum.ts'

/** Whether where a cut stands along an axis of its face, or the outline has its corners, was scaled off the drawing. */
export type IsScaled = (cut: string | undefined, axis: Axis) => boolean

/**
 * Of everything that belongs to a cut or the outline what was scaled off the drawing is looked at, but its own breadth and
 * depth, which say so themselves, and what places it along the other axis.
 */
export function isScaledIn(
  { id, drawn, length, width, thickness }: Part,
  { scaled }: Pick<Model, 'scaled'>,
): IsScaled {
  const own = new Set<Size>([length, width, thickness])
  for (const { shape } of drawn.features) {
    for (const size of Object.values(shape)) if (isSize(size)) own.add(size)
  }
  const places = [...own].map(({ source }) => `${source.from} ${source.to}`)
  const known = new Set(places)
  const found = scaled.filter(
    ({ size, place }) => place.part === id && !known.has(`${size.source.from} ${size.source.to}`),
  )
  const scaledAlong = (axis: Axis) =>
    new Set(found.filter(one => (one.axis ?? axis) === axis).map(({ place }) => place.feature))
  const cuts = { x: scaledAlong('x'), y: scaledAlong('y') }
  return (cut, axis) => cuts[axis].has(cut)
}

function isSize(value: unknown): value is Size {
  return typeof value === 'object' && value !== null && 'mm' in value && 'written' in value
}
