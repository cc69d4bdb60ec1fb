import type { FaceName } from '../../finding/face-name.ts'
import type { Pose } from '../../model/pose.ts'

/** A face that somebody looks straight at. */
export type Seen = { readonly face: FaceName; readonly pose: Pose }
