import { leaf } from '../../yaml/schema/leaf.ts'
import type { Reader } from '../../yaml/schema/reader.ts'
import { sizeIn } from '../../yaml/schema/size.ts'
import type { WrittenAngle } from '../plan.ts'

/** An angle in degrees, or a formula of one. */
export const angle: Reader<WrittenAngle> = leaf('an angle in degrees, such as 22 1/2, or unknown', sizeIn)
