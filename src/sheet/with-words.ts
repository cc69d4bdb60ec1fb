import type { Drawing } from '../drawing/drawing.ts'
import type { Mark } from '../drawing/mark.ts'
import { boundsOfMarks } from '../drawing/mark-bounds.ts'
import { joinBounds } from '../geometry/measure/bounds.ts'
import type { Bounds } from '../geometry/shape/contour.ts'
import type { Point } from '../geometry/shape/point.ts'
import type { Fonts } from '../text/fonts.ts'
import { type KeyLine, keyTable } from './key/key-table.ts'
import type { Otherwise, Sheet } from './sheet.ts'
import { titleMarks, titleUnder } from './title.ts'
import { whenLookedAt } from './when-looked-at.ts'

/** Between what is drawn and the words beside it. */
const gap = 6
/** The narrowest column that a key reads well in. */
const narrowKey = 72
const wideKey = 150

/** What is drawn true to size. */
export type TrueSize = {
  readonly marks: readonly Mark[]
  /** The rectangle that the marks lie in. */
  readonly box: Bounds
  readonly keepWhole?: Drawing['keepWhole']
}

/** What is drawn true to size, and the words that stand beside it. */
export type WithWords = TrueSize & {
  readonly about: Pick<Drawing, 'id' | 'caption'>
  /** The same with its lettering where seams between pages can leave it whole. */
  readonly roomier?: () => TrueSize
  /** Each of its sentences begins a line. */
  readonly title: readonly string[]
  readonly lines: readonly KeyLine[]
  /** Where the words are on another paper: what stands under the drawing, and over its words, so that each leads to the other. */
  readonly apart?: { readonly under: readonly string[]; readonly over: string }
}

/** The drawing with its words; with its words on another paper; and for several pages. */
export type WordedDrawings = {
  readonly drawings: Sheet['drawings']
  readonly otherwise: readonly [Otherwise]
  readonly large: NonNullable<Sheet['large']>
}

/** A drawing with a title and a key below it or beside it, in arrangements for pages of other shapes. */
export function withWords(
  { about, marks, box, keepWhole = [], roomier, title, lines, apart }: WithWords,
  fonts: Fonts,
): WordedDrawings {
  const words = (at: Point, width: number, over: readonly string[] = []): readonly Mark[] => {
    const head = titleMarks([...over, ...title], at, width, fonts)
    return [...head.marks, ...keyTable(lines, { x: at.x, y: head.bottom }, width, fonts).marks]
  }
  const arranged = (at: Point, width: number): Drawing =>
    whenLookedAt(about, () => {
      const key = words(at, width)
      return { marks: [...marks, ...key], bounds: joinBounds(box, boundsOfMarks(fonts, key)) }
    })
  const below = (width: number): Drawing =>
    arranged({ x: box.left, y: box.bottom - gap }, Math.max(box.right - box.left, width))
  const keyAlone = (width: number): Drawing =>
    whenLookedAt({ ...about, id: `${about.id}-key` }, () => {
      const key = words({ x: 0, y: 0 }, width, apart && [apart.over])
      return { marks: key, bounds: boundsOfMarks(fonts, key) }
    })
  const under = apart === undefined ? [] : titleUnder(apart.under, box, fonts)
  const alone: Drawing = {
    ...about,
    marks: [...marks, ...under],
    bounds: joinBounds(box, boundsOfMarks(fonts, under)),
    keepWhole,
  }
  const beside = [keyAlone(wideKey), keyAlone(narrowKey)] as const
  return {
    drawings: [below(wideKey), below(narrowKey), arranged({ x: box.right + gap, y: box.top }, narrowKey)],
    otherwise: [{ drawings: [alone], beside: [beside] }],
    large: {
      drawing: alone,
      beside,
      ...(roomier === undefined
        ? {}
        : {
            roomier: whenLookedAt(about, () => {
              const { box: bounds, ...drawn } = roomier()
              return { ...drawn, bounds }
            }),
          }),
    },
  }
}
