import type { Fonts } from '../../text/fonts.ts'
import { type DimensionText, dimensionText } from './dimension-text.ts'
import { type Edge, isLevel } from './edge.ts'
import type { Rank, Run, Stop } from './run.ts'
import { spread } from './spread.ts'

/** A dimension with its lettering and where along the edge that stands. */
export type SpreadStop = { readonly stop: Stop; readonly text: DimensionText; readonly place: number }

export type SpreadRun = {
  readonly origin: number
  /** In ascending order. */
  readonly stops: readonly SpreadStop[]
  /** The farthest that lettering stands aside from its line. */
  readonly shift: number
  /** What found no room. */
  readonly dropped: readonly Stop[]
}

/** White between one dimension's lettering and the next: side by side they must not be read as one size. */
const white = { level: 3.4, upward: 1.4, upright: 1.2 } as const
/** Lettering that stands farther aside than this from what it measures is not read at a glance. */
const farthest = { level: 16, upward: 30, upright: 30 } as const
const ranks: readonly Rank[] = [3, 2, 1, 0]

/**
 * Lettering of a run in one line beside an edge, each as near to its place as the others let it be. Along a level edge it
 * reads level where there is room, else upward. Where there is no room even so, what is wanted least is dropped.
 */
export function spreadRun({ origin, stops }: Run, edge: Edge, fonts: Fonts): SpreadRun {
  const sorted = [...stops].sort((a, b) => a.at - b.at || a.rank - b.rank)
  const level = isLevel(edge)
  let before = Number.NaN
  for (const rank of ranks) {
    const kept = sorted.filter(stop => stop.rank <= rank)
    if (kept.length === before) continue
    before = kept.length
    for (const upward of level ? [false, true] : [false]) {
      const way = level ? (upward ? 'upward' : 'level') : 'upright'
      const texts = kept.map(({ words }) => dimensionText(words, edge, upward, fonts))
      const places = spread(
        kept.map(({ at }) => at),
        texts.map(({ along }) => along + white[way]),
      )
      const shift = Math.max(0, ...kept.map(({ at }, i) => Math.abs(places[i]! - at)))
      if (shift > farthest[way] && (rank > 0 || (level && !upward))) continue
      return {
        origin,
        stops: kept.map((stop, i) => ({ stop, text: texts[i]!, place: places[i]! })),
        shift,
        dropped: sorted.filter(stop => stop.rank > rank),
      }
    }
  }
  throw new RangeError('the least of a run always stands')
}
