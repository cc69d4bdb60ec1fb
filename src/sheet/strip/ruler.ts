import { lettering } from '../../drawing/lettering.ts'
import { linesMark, textMark } from '../../drawing/make-mark.ts'
import type { Mark } from '../../drawing/mark.ts'
import { millimetresPerInch, type Unit } from '../../length/unit.ts'
import { coincident } from '../../number/tolerance.ts'

type Division = {
  readonly step: number
  readonly long: number
  readonly middle: number
  readonly perNumber: number
}

const divisions: Readonly<Record<Unit, Division>> = {
  inch: { step: millimetresPerInch / 16, long: 16, middle: 8, perNumber: 1 },
  mm: { step: 1, long: 10, middle: 5, perNumber: 10 },
}

const ticks = { long: 4, middle: 3, short: 1.6 } as const
/** Beyond the tails that a line of figures leaves room for. */
const numberGap = 1

/** How much room a ruler takes above its line. */
export const rulerHeight = ticks.long + numberGap + lettering.medium + 0.1

/**
 * A ruler that stands on its line at height `y`, from x = 0 to `length` millimetres to the right, or to the left where
 * `toward` is −1; a number at every inch or centimetre that has room for it.
 */
export function ruler(
  length: number,
  toward: 1 | -1,
  y: number,
  unit: Unit,
  subject: string,
): readonly Mark[] {
  const { step, long, middle, perNumber } = divisions[unit]
  const belongs = { layer: 'dimension', subject } as const
  const count = Math.floor((length + coincident) / step)
  const tick = (i: number): number =>
    i % long === 0 ? ticks.long : i % middle === 0 ? ticks.middle : ticks.short
  const numbers = Array.from({ length: Math.floor(count / long) + 1 }, (_, i) =>
    textMark(
      belongs,
      [`${i * perNumber}`],
      { x: toward * i * long * step, y: y + ticks.long + numberGap },
      lettering.medium,
      { align: 'middle' },
    ),
  )
  return [
    linesMark(belongs, 'cut', [
      [
        { x: 0, y },
        { x: toward * length, y },
      ],
    ]),
    linesMark(
      belongs,
      'thin',
      Array.from({ length: count + 1 }, (_, i) => {
        const x = toward * i * step
        return [
          { x, y },
          { x, y: y + tick(i) },
        ] as const
      }),
    ),
    ...numbers,
  ]
}
