import type { Model, Part } from '../../model/part.ts'
import type { Size } from '../../model/size.ts'

/**
 * Tells whether where a cut stands, or where the outline has its corners, was scaled off the drawing: whether anything
 * that belongs to it was, but its own breadth and depth, which say so themselves.
 */
export function isScaledIn(
  { id, drawn, length, width, thickness }: Part,
  { scaled }: Pick<Model, 'scaled'>,
): (cut: string | undefined) => boolean {
  const own = new Set<Size>([length, width, thickness])
  for (const { shape } of drawn.features) {
    for (const size of Object.values(shape)) if (isSize(size)) own.add(size)
  }
  const places = [...own].map(({ source }) => `${source.from} ${source.to}`)
  const known = new Set(places)
  const found = new Set(
    scaled
      .filter(({ size, place }) => place.part === id && !known.has(`${size.source.from} ${size.source.to}`))
      .map(({ place }) => place.feature),
  )
  return cut => found.has(cut)
}

function isSize(value: unknown): value is Size {
  return typeof value === 'object' && value !== null && 'mm' in value && 'written' in value
}
