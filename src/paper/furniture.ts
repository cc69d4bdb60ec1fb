import type { Caption } from '../drawing/drawing.ts'
import { fitText } from '../drawing/fit-text.ts'
import { lettering } from '../drawing/lettering.ts'
import { lineStyles } from '../drawing/line-role.ts'
import { linesMark, textMark } from '../drawing/make-mark.ts'
import type { Mark } from '../drawing/mark.ts'
import type { Unit } from '../length/unit.ts'
import type { Fonts } from '../text/fonts.ts'
import type { Frame } from './frame.ts'
import { scaleBar, scaleBarReach } from './scale-bar.ts'

/** What the furniture of a page has to say. */
export type PageFacts = {
  readonly caption: Caption
  readonly number: number
  readonly count: number
}

const text = { layer: 'paper', subject: 'page' } as const

/** Kept short, where it matters, and never in place of the machine's manual or a teacher. Common practice, no source. */
const caution =
  'Eyes, ears and lungs protected; work clamped; unplug before changing a bit or blade. The machine’s manual, local rules and qualified teaching come first.'

/**
 * What every page carries: what it belongs to, which page it is, and the two bars that prove its scale. The bars have
 * hundreds of ticks and are the same on every page of a frame, so they are drawn once.
 */
export function furniture(frame: Frame, units: Unit, fonts: Fonts): (facts: PageFacts) => readonly Mark[] {
  const same = [...foot(frame, units, fonts), ...side(frame, units)]
  return facts => [...head(frame, facts, fonts), ...same]
}

function head({ head: box }: Frame, { caption, number, count }: PageFacts, fonts: Fonts): readonly Mark[] {
  const page = `page ${number} of ${count}`
  const first = box.top - lettering.large - 0.5
  const second = first - lettering.medium - 2.2
  const rule = box.bottom
  // the ink of the line's ends stays within the strip too
  const half = lineStyles.thin.width / 2
  // the right column keeps its own width; the left one takes what is left
  const room = box.right - box.left - rightColumn
  const name = [caption.part, caption.pieces].filter(s => s !== undefined).join(' · ')
  const below = [caption.plan, caption.sheet].filter(s => s !== '').join(' · ')
  return [
    textMark(
      text,
      [fitText(fonts.bold, name === '' ? caption.plan : name, lettering.large, room)],
      { x: box.left, y: first },
      lettering.large,
      {
        weight: 'bold',
      },
    ),
    textMark(
      text,
      [fitText(fonts.regular, below, lettering.medium, room)],
      { x: box.left, y: second },
      lettering.medium,
    ),
    textMark(text, [page], { x: box.right, y: first }, lettering.large, { align: 'end' }),
    textMark(text, ['print at 100 %'], { x: box.right, y: second }, lettering.medium, { align: 'end' }),
    linesMark(text, 'thin', [
      [
        { x: box.left + half, y: rule },
        { x: box.right - half, y: rule },
      ],
    ]),
  ]
}

/** Room for "page 100 of 100" in large letters. */
const rightColumn = 46

function foot({ foot: box }: Frame, units: Unit, fonts: Fonts): readonly Mark[] {
  const last = box.bottom + 0.8
  const first = last + lettering.small + 1.7
  const bar = box.top - scaleBarReach
  const room = box.right - box.left
  const line = (words: string, height: number, y: number): Mark =>
    textMark(text, [fitText(fonts.regular, words, height, room)], { x: box.left, y }, height)
  return [
    ...scaleBar(
      { direction: 'across', from: { x: box.left + barInset, y: bar }, length: room - barInset - barTail },
      units,
    ),
    line(
      'Print at 100 %, never “fit to page”. Lay a steel rule on both bars before anything is glued on.',
      lettering.medium,
      first,
    ),
    line(caution, lettering.small, last),
  ]
}

function side({ side: box }: Frame, units: Unit): readonly Mark[] {
  const from = { x: box.left + scaleBarReach, y: box.bottom + barInset }
  return scaleBar({ direction: 'along', from, length: box.top - box.bottom - barInset - barTail }, units)
}

/** White before a bar begins, so that its end mark stands free. */
const barInset = 1
/** Room for the name of the unit, which stands behind the bar's end. */
const barTail = 10
