import type { Unit } from '../length/unit.ts'
import { printable } from '../number/tolerance.ts'
import { nearestSize, nextSize } from './size-set.ts'
import type { Bits, BitTip, SizeSets } from './workshop.ts'

/** The sizes that a plan in this unit is made with; those of the other unit where the shop has none. */
export function sizesFor(sets: SizeSets, unit: Unit): readonly number[] {
  const own = sets[unit]
  return own.length > 0 ? own : sets[unit === 'inch' ? 'mm' : 'inch']
}

/**
 * The bit for a hole that is to be so wide: taken up to the next of the set of the plan's unit, or nothing where
 * there is none as large.
 */
export function bitFor(bits: Bits, diameter: number, unit: Unit): number | undefined {
  return nextSize(sizesFor(bits, unit), diameter)
}

/** Whether the shop has this size, in inches or in millimetres. */
export function has(sets: SizeSets, size: number): boolean {
  const nearest = nearestOf(sets, size)
  return nearest !== undefined && Math.abs(nearest - size) <= printable
}

/** The size nearest to one, in inches or in millimetres; nothing where the shop has none at all. */
export function nearestOf(sets: SizeSets, size: number): number | undefined {
  const nearest = [sets.inch, sets.mm].flatMap(set => nearestSize(set, size) ?? [])
  return nearestSize(
    nearest.sort((a, b) => a - b),
    size,
  )
}

/**
 * How far the point of a bit stands beyond its full diameter, in millimetres.
 *
 * Source: a cone of the angle A on a diameter D is (D/2)·cot(A/2) high.
 */
export function pointLength({ point, pointAngle, spur }: BitTip, diameter: number): number {
  switch (point) {
    case 'twist':
      return diameter / 2 / Math.tan(pointAngle / 2)
    case 'brad':
      return spur
    case 'flat':
      return 0
  }
}
