import type { FaceName } from '../../finding/face-name.ts'
import type { Region } from '../../geometry/shape/contour.ts'
import type { Extent } from '../box-faces.ts'
import type { Feature } from '../feature.ts'
import type { Context } from './context.ts'
import type { FaceFrame } from './face-frame.ts'

/** The part as a cut finds it. */
export type Site = {
  readonly context: Context
  readonly extent: Extent
  readonly outline: Region
  /** Corners that are rounded by a radius which the drawing does not give. */
  readonly unknownCorners: readonly string[]
  /** A face by its id; nothing where the outline has no such edge. */
  readonly frame: (face: FaceName) => FaceFrame | undefined
  readonly edgeNames: readonly string[]
  /** What has been built of the cuts that this one is placed from. */
  readonly built: (cut: string) => readonly Feature[] | undefined
  readonly cutNames: readonly string[]
}
