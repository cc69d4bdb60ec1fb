import type { WrittenAngle } from '../plan.ts'
import { leaf } from './leaf.ts'
import type { Reader } from './reader.ts'
import { sizeIn } from './size.ts'

/** An angle in degrees, or a formula of one. */
export const angle: Reader<WrittenAngle> = leaf('an angle in degrees, such as 22 1/2, or unknown', sizeIn)
