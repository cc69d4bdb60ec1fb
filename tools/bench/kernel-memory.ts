/** Loads the kernel alone, does one operation on 100,000 segments, and prints the peak of memory before and after. */
import { union } from '../../src/geometry/boolean/boolean.ts'
import { offsetRegion } from '../../src/geometry/offset/offset.ts'
import { shift } from '../../src/geometry/shape/matrix.ts'
import { transformRegion } from '../../src/geometry/shape/transform.ts'
import { gear } from '../../tests/geometry/generate/gear.ts'

const region = gear(25_000)
const copy = transformRegion(region, shift(7.3, 3.1))
const peak = (): number => Math.round(process.resourceUsage().maxRSS / 1024)
const before = peak()
const outcome = process.argv[2] === 'union' ? union([region], [copy]) : offsetRegion(region, 1)
if (!outcome.ok) throw new Error(outcome.fault.reason)
console.log(JSON.stringify({ before, after: peak() }))
