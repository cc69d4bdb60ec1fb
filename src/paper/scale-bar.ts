import { lettering } from '../drawing/lettering.ts'
import { linesMark, textMark } from '../drawing/make-mark.ts'
import type { Mark } from '../drawing/mark.ts'
import { apply, compose, type Matrix, quarterTurns, shift } from '../geometry/shape/matrix.ts'
import type { Point } from '../geometry/shape/point.ts'
import { millimetresPerInch, type Unit } from '../length/unit.ts'
import { coincident } from '../number/tolerance.ts'

/** A scale bar as laid: it starts at `from` and runs `length` millimetres or less to the right (across) or up (along). */
export type ScaleBarPlace = {
  readonly direction: 'across' | 'along'
  readonly from: Point
  readonly length: number
}

type Scale = {
  readonly unit: Unit
  /** Millimetres from tick to tick. */
  readonly step: number
  /** A tick is long at every `long` steps, and carries its number. */
  readonly long: number
  readonly middle: number
  /** What the first long tick's number says. */
  readonly perNumber: number
  readonly name: string
}

const scales: Readonly<Record<Unit, Scale>> = {
  inch: { unit: 'inch', step: millimetresPerInch / 8, long: 8, middle: 4, perNumber: 1, name: 'in' },
  mm: { unit: 'mm', step: 1, long: 10, middle: 5, perNumber: 10, name: 'mm' },
}

const ticks = { long: 3, middle: 2.2, short: 1.4 } as const

/** No bar needs to be longer than the rule that is at hand on every bench. */
const longestBar = 6 * millimetresPerInch

/**
 * A bar to lay a steel rule against: one line with the plan's units on its left or upper side and the other units
 * on the other. Both start at the same end mark; each ends at its last whole inch or centimetre.
 */
export function scaleBar(place: ScaleBarPlace, unit: Unit): readonly Mark[] {
  const toPage = compose(
    place.direction === 'across' ? quarterTurns(0) : quarterTurns(1),
    shift(place.from.x, place.from.y),
  )
  const length = Math.min(place.length, longestBar)
  const other: Unit = unit === 'inch' ? 'mm' : 'inch'
  const subject = `scale-${place.direction}`
  return [
    ...half(scales[unit], 1, length, toPage, subject),
    ...half(scales[other], -1, length, toPage, subject),
  ]
}

/** One side of the bar: the line itself, its ticks and numbers; `up` 1 stands on the line and −1 hangs from it. */
function half(scale: Scale, up: 1 | -1, length: number, toPage: Matrix, subject: string): readonly Mark[] {
  const at = (x: number, y: number): Point => apply(toPage, { x, y })
  const belongs = { layer: 'paper', subject: `${subject}-${scale.unit}` } as const
  const unitLength = scale.step * scale.long
  // a bar of exactly so many units must not lose the last one to rounding
  const units = Math.floor((length + coincident) / unitLength)
  const end = units * unitLength
  const angle = Math.atan2(toPage.b, toPage.a)
  const tick = (i: number): number =>
    i % scale.long === 0 ? ticks.long : i % scale.middle === 0 ? ticks.middle : ticks.short
  const tickLine = (i: number) => [at(i * scale.step, 0), at(i * scale.step, up * tick(i))] as const
  const count = units * scale.long
  const base = up === 1 ? ticks.long + numberGap : -ticks.long - numberGap - lettering.small
  const numbers = Array.from({ length: units }, (_, i) =>
    textMark(belongs, [`${(i + 1) * scale.perNumber}`], at((i + 1) * unitLength, base), lettering.small, {
      angle,
      align: 'middle',
    }),
  )
  const unitName = textMark(belongs, [scale.name], at(end + unitNameAside, base), lettering.small, { angle })
  return [
    linesMark(belongs, 'wide', [[at(0, 0), at(end, 0)]]),
    linesMark(
      belongs,
      'cut',
      Array.from({ length: count + 1 }, (_, i) => tickLine(i)),
    ),
    ...numbers,
    unitName,
  ]
}

/** From the bar's end to the name of its unit, clear of half the last number. */
const unitNameAside = 3.5

/** White between a tick and its number. */
const numberGap = 0.5

/** Round digits stand a little higher than flat capitals. */
const overshoot = 0.05

/** How far a bar's ticks and numbers reach to either side of its line. */
export const scaleBarReach = ticks.long + numberGap + lettering.small + overshoot
