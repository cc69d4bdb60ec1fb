import { lettering } from '../../drawing/lettering.ts'
import { linesMark, textMark } from '../../drawing/make-mark.ts'
import type { Mark } from '../../drawing/mark.ts'
import { apply, compose, quarterTurns, shift } from '../../geometry/shape/matrix.ts'
import type { Point } from '../../geometry/shape/point.ts'
import { millimetresPerInch, type Unit } from '../../length/unit.ts'
import { vernierLines, verniers } from './vernier.ts'

/** How far the marks of a bar reach to either side of its line: on that of the millimetres, and of the inches. */
export const longBarReach = { mm: 8.8, inch: 6.2 } as const

type Side = {
  readonly step: number
  readonly long: number
  readonly middle: number
  readonly perNumber: number
}

const sides: Readonly<Record<Unit, Side>> = {
  mm: { step: 1, long: 10, middle: 5, perNumber: 10 },
  inch: { step: millimetresPerInch / 16, long: 16, middle: 8, perNumber: 1 },
}

/**
 * A bar to be measured: a line between two end marks, millimetres on its left or upper side and inches on the other, and
 * on each side a vernier before the end mark, for a rule that is laid on the other side.
 */
export function longBar(direction: 'across' | 'along', from: Point, length: number): readonly Mark[] {
  const turns = direction === 'across' ? 0 : 1
  const toPage = compose(quarterTurns(turns), shift(from.x, from.y))
  const at = (x: number, y: number): Point => apply(toPage, { x, y })
  const belongs = { layer: 'paper', subject: `bar-${direction}` } as const
  const angle = (turns * Math.PI) / 2
  const number = (text: string, x: number, up: 1 | -1, weight: 'regular' | 'bold'): Mark =>
    textMark(
      belongs,
      [text],
      at(x, up === 1 ? longTick + 0.5 : -longTick - 0.5 - lettering.small),
      lettering.small,
      { angle, align: 'middle', weight },
    )
  return [
    linesMark(belongs, 'wide', [
      [at(0, 0), at(length, 0)],
      [at(0, -endMark), at(0, endMark)],
      [at(length, -endMark), at(length, endMark)],
    ]),
    textMark(belongs, ['0'], at(0, endMark + 0.5), lettering.small, { angle }),
    textMark(belongs, [`${length} mm`], at(length, endMark + 0.5), lettering.small, { angle, align: 'end' }),
    ...([1, -1] as const).flatMap((up): readonly Mark[] => {
      const unit = up === 1 ? 'mm' : 'inch'
      const { step, long, middle, perNumber } = sides[unit]
      const vernier = vernierLines(verniers[unit])
      const free = length - vernier.at(-1)! - besideVernier
      const count = Math.floor(free / step)
      const tick = (i: number): number => (i % long === 0 ? longTick : i % middle === 0 ? 2.2 : 1.4)
      return [
        linesMark(
          belongs,
          'cut',
          Array.from(
            { length: count },
            (_, i) => [at((i + 1) * step, 0), at((i + 1) * step, up * tick(i + 1))] as const,
          ),
        ),
        linesMark(
          belongs,
          'cut',
          vernier.map(
            (back, line) =>
              [at(length - back, 0), at(length - back, up * (line % 2 === 0 ? longTick : 2.2))] as const,
          ),
        ),
        ...Array.from({ length: Math.floor(count / long) }, (_, i) =>
          number(
            `${(i + 1) * perNumber}${up === -1 && i === 0 ? ' in' : ''}`,
            (i + 1) * step * long,
            up,
            'regular',
          ),
        ),
        ...vernier.flatMap((back, line) =>
          line > 0 && line % (verniers[unit].parts / 2) === 0
            ? [number(`${line}`, length - back, up, 'bold')]
            : [],
        ),
      ]
    }),
  ]
}

const longTick = 3
/** The end marks stand out from all ticks. */
const endMark = 6
/** White between the last tick of the bar and the first line of its vernier. */
const besideVernier = 2
