import { evaluateAngle } from './evaluate.ts'
import { faultAt, type Read, read, refused } from './fault.ts'
import { readSize } from './read-size.ts'
import { emptyScope } from './scope.ts'

/**
 * Reads an angle without names in it: `45`, `22 1/2`, `30°`, `30 deg`, `360 / 7`. In radians.
 * An angle that may hold names is read with `readSize` and calculated with `evaluateAngle`.
 */
export function readAngle(text: string): Read<number> {
  const size = readSize(text)
  if (!size.ok) return size
  // there are no lengths in an angle without names, so their unit does not matter
  const angle = evaluateAngle(size.value, emptyScope, 'mm')
  if (!angle.ok) return angle
  if (angle.value.kind === 'angle') return read(angle.value.radians)
  return refused(faultAt(text, { from: 0, to: text.length }, 'unknown-alone', 'an angle in degrees'))
}
