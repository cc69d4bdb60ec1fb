import { lettering } from '../../drawing/lettering.ts'
import { fillMark, linesMark, textMark } from '../../drawing/make-mark.ts'
import type { Mark } from '../../drawing/mark.ts'
import { wrap } from '../../drawing/wrap.ts'
import type { Point } from '../../geometry/shape/point.ts'
import { polygon } from '../../geometry/shape/polygon.ts'
import { millimetresPerInch, type Unit } from '../../length/unit.ts'
import { coincident } from '../../number/tolerance.ts'
import type { Fonts } from '../../text/fonts.ts'
import type { StackedFraction } from '../../text/words.ts'
import { vernierLines, verniers } from './vernier.ts'

/** Drawn three times as large, so that nobody lays a rule on it and a line that meets another is told from its neighbours. */
const enlarged = 3

/** A worked example of reading a vernier: the end of a bar that is so many spaces of the rule and a part long. */
export type ReadingExample = {
  readonly unit: Unit
  /** Whole spaces of the rule before the end mark. */
  readonly spaces: number
  /** The line of the vernier that meets one of the rule's. */
  readonly line: number
}

const belongs = { layer: 'paper', subject: 'example' } as const

/** How wide an example is, and how far it hangs below its upper left corner. */
export const exampleExtent = { width: 56, height: 25 } as const

/** The bar with its vernier above, the rule that lies against it below, and how it is read in words. */
export function readingExample(at: Point, example: ReadingExample, fonts: Fonts): readonly Mark[] {
  const { unit, spaces, line } = example
  const vernier = verniers[unit]
  const { space, parts } = vernier
  const end = spaces * space + (line * space) / parts
  const meeting = end - vernierLines(vernier)[line]!
  const first = end - vernierLines(vernier).at(-1)! - space
  const base = at.y - 8
  const x = (along: number): number => at.x + enlarged * (along - first)
  const stroke = (along: number, height: number) =>
    [
      { x: x(along), y: base },
      { x: x(along), y: base + height },
    ] as const
  const ruleLines = Array.from(
    { length: Math.floor((end + 2 * space - first) / space) },
    (_, i) => (Math.ceil(first / space) + i) * space,
  )
  const long = unit === 'mm' ? 5 : 4
  const isLong = (along: number): boolean => {
    const spaces = along / space
    return Math.abs(spaces - long * Math.round(spaces / long)) < coincident
  }
  const tip = { x: x(meeting), y: base - 6.2 }
  return [
    linesMark(belongs, 'thin', [
      [
        { x: x(first), y: base },
        { x: x(ruleLines.at(-1)! + space / 2), y: base },
      ],
      ...ruleLines.map(along => stroke(along, isLong(along) ? -5 : -3.5)),
    ]),
    linesMark(
      belongs,
      'cut',
      vernierLines(vernier).map((back, i) => stroke(end - back, i % 2 === 0 ? 3.5 : 2.6)),
    ),
    linesMark(belongs, 'wide', [stroke(end, 6)]),
    ...[line, parts].map(i =>
      textMark(belongs, [`${i}`], { x: x(end - vernierLines(vernier)[i]!), y: base + 4.2 }, lettering.small, {
        align: 'middle',
        weight: i === line ? 'bold' : 'regular',
      }),
    ),
    fillMark(belongs, [
      {
        outer: polygon([tip, { x: tip.x + 0.8, y: tip.y - 2 }, { x: tip.x - 0.8, y: tip.y - 2 }]),
        holes: [],
      },
    ]),
    ...explained(at, example, fonts),
  ]
}

function explained(at: Point, { unit, spaces, line }: ReadingExample, fonts: Fonts): readonly Mark[] {
  const { parts } = verniers[unit]
  const y = at.y - 20
  if (unit === 'mm') {
    const words = `just past ${spaces} mm, line ${line} meets: ${spaces}.${line} mm`
    return wrap(words, fonts.regular, lettering.small, exampleExtent.width).map((row, i) =>
      textMark(belongs, [row], { x: at.x, y: y - i * 3 }, lettering.small),
    )
  }
  const inches = (numerator: number, denominator: number): StackedFraction => {
    const divisor = greatestDivisor(numerator, denominator)
    const whole = Math.floor(numerator / denominator)
    return {
      whole: `${whole}`,
      over: `${(numerator - whole * denominator) / divisor}`,
      under: `${denominator / divisor}`,
    }
  }
  const total = inches(spaces * parts + line, 16 * parts)
  return [
    textMark(
      belongs,
      ['just past ', inches(spaces, 16), `", line ${line} meets: `, total, '"'],
      { x: at.x, y: y - 0.6 },
      lettering.small,
    ),
  ]
}

function greatestDivisor(a: number, b: number): number {
  return b === 0 ? a : greatestDivisor(b, a % b)
}

/** Examples for a bar of a length in millimetres: ends that it might have. */
export function examplesFor(length: number): readonly ReadingExample[] {
  const sixteenths = Math.floor((length * 16) / millimetresPerInch)
  return [
    { unit: 'mm', spaces: length - 1, line: 3 },
    // a whole number of inches has no fraction to show
    { unit: 'inch', spaces: sixteenths % 16 === 0 ? sixteenths - 1 : sixteenths, line: 5 },
  ]
}
