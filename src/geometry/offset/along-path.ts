import { difference } from '../boolean/boolean.ts'
import type { Contour, Region } from '../shape/contour.ts'
import { failure, type Outcome } from '../shape/outcome.ts'
import { offsetPath } from './offset.ts'
import type { PathOptions } from './options.ts'

/**
 * The slot that a cutter `width` millimetres in diameter leaves along a path, half the width on each side of
 * it. Ends are round unless `options.end` says otherwise; a flat end is made at the end of the path, a square
 * one half the width beyond it.
 *
 * Fails as `offsetPath` does, with `distance` for a width that is not positive.
 */
export function slotAlongPath(
  path: Contour,
  width: number,
  options: PathOptions = {},
): Outcome<readonly Region[]> {
  return offsetPath(path, width / 2, options)
}

/**
 * A rim `rim` millimetres wide around the slot of `width` along a path: what is left between two slots. With
 * round and square ends it goes all the way round; flat ends leave it open there, in two rails.
 *
 * Fails with reason `rim` when that is not positive, else as {@link slotAlongPath} and `difference` do.
 */
export function ringAlongPath(
  path: Contour,
  width: number,
  rim: number,
  options: PathOptions = {},
): Outcome<readonly Region[]> {
  if (!(rim > 0)) {
    const input = { path, width, rim, options }
    return failure({ operation: 'ringAlongPath', reason: 'rim', facts: { rim }, input })
  }
  const outside = slotAlongPath(path, width + 2 * rim, options)
  if (!outside.ok) return outside
  const inside = slotAlongPath(path, width, options)
  return inside.ok ? difference(outside.value, inside.value) : inside
}
