import { bevel } from './bevel.ts'
import type { CutReaders } from './cut-kind.ts'
import { cutOut } from './cut-out.ts'
import { chamfer, roundOver } from './eased.ts'
import { engrave } from './engrave.ts'
import { grid } from './grid.ts'
import { groove } from './groove.ts'
import { hole } from './hole.ts'
import { holeCircle } from './hole-circle.ts'
import { notch } from './notch.ts'
import { rebate } from './rebate.ts'
import { row } from './row.ts'
import { slot } from './slot.ts'

/** Every kind of cut by the key that begins it. A kind in `CutPlan` that lacks its reader here fails the type check. */
export const cutKinds: CutReaders = {
  hole,
  row,
  grid,
  'hole-circle': holeCircle,
  slot,
  notch,
  'cut-out': cutOut,
  groove,
  rebate,
  bevel,
  chamfer,
  'round-over': roundOver,
  engrave,
}
