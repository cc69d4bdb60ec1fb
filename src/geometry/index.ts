/**
 * Paperjig's geometry: plane shapes of exact lines and arcs. Lengths are millimetres, angles radians, y points
 * up and a positive turn is counter-clockwise. An operation that a shape can defeat gives an {@link Outcome}; a
 * RangeError is a fault of the caller.
 *
 * @module geometry
 */

export * from './approximate/beziers.ts'
export * from './approximate/chords.ts'
export * from './measure/along.ts'
export * from './measure/area.ts'
export * from './measure/bounds.ts'
export * from './measure/inside.ts'
export * from './measure/length.ts'
export * from './measure/nearest.ts'
export * from './shape/chain.ts'
export * from './shape/circle.ts'
export * from './shape/contour.ts'
export * from './shape/matrix.ts'
export * from './shape/outcome.ts'
export * from './shape/point.ts'
export * from './shape/polygon.ts'
export * from './shape/rectangle.ts'
export * from './shape/reverse.ts'
export * from './shape/segment.ts'
export * from './shape/slot.ts'
export * from './shape/span.ts'
export * from './shape/transform.ts'
