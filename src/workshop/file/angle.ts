import { excerpt } from '../../finding/visible.ts'
import { readAngle } from '../../length/read-angle.ts'
import { degrees, radians } from '../../number/degrees.ts'
import { writeDecimal } from '../../number/write-decimal.ts'
import { fault } from '../../yaml/fault.ts'
import type { Setting } from './setting.ts'
import { value } from './value.ts'

const decimals = 9

/** An angle between the two, in degrees in the file and in radians in the shop. */
export function angle(leastDegrees: number, largestDegrees: number): Setting<number> {
  const wanted = `an angle from ${leastDegrees} to ${largestDegrees} degrees`
  return value(
    wanted,
    ({ text, source }, _, fail) => {
      const read = readAngle(text)
      if (read.ok && read.value >= radians(leastDegrees) && read.value <= radians(largestDegrees))
        return read.value
      return void fail(fault('not-a-size', source, { found: excerpt(text), wanted, why: 'wrong-kind' }))
    },
    found => writeDecimal(degrees(found), decimals),
  )
}
