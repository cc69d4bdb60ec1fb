import type { Bounds } from '../../geometry/shape/contour.ts'
import { contentBoxes } from './content.ts'
import type { MeasuredMark } from './measured-mark.ts'
import { grown, type Spare } from './spare.ts'

/** What a match mark had better not cover, and how bad every square millimetre of it is. */
export type Taken = { readonly box: Bounds; readonly harm: number }

/** Letters under a mark cannot be read; the white around them keeps the two apart; a line goes on beyond the mark. */
const harms = { letters: 10, hole: 2, white: 1, line: 0.1 } as const
/** Half as wide as a line of a drawing looks with some white beside it. */
const lineAside = 0.3

/** What the marks of a drawing take: all its lettering, its holes, and far behind these its lines. */
export function takenBy(marks: readonly MeasuredMark[], spares: readonly Spare[]): readonly Taken[] {
  const lines = contentBoxes(marks.filter(({ mark }) => mark.kind !== 'text'))
  return [
    ...marks.flatMap(({ mark, box }) => (mark.kind === 'text' ? [{ box, harm: harms.letters }] : [])),
    ...spares.flatMap(({ kind, box }) =>
      kind === 'end' ? [] : [{ box, harm: kind === 'hole' ? harms.hole : harms.white }],
    ),
    ...lines.map(box => ({ box: grown(box, lineAside), harm: harms.line })),
  ]
}
