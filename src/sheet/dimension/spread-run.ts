import type { Fonts } from '../../text/fonts.ts'
import { type DimensionText, dimensionText } from './dimension-text.ts'
import { type Edge, isLevel } from './edge.ts'
import type { Crowding, Rank, Run, Stop } from './run.ts'
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
type Way = keyof typeof white
/** Lettering that is close by stands no farther aside. */
export const closest = 6
/**
 * How far lettering may stand aside from what it measures: farther, and it is not read at a glance; and of those close
 * by, so far that a view with its dimensions is little longer than the view.
 */
const farthest: Readonly<Record<Crowding, Readonly<Record<Way, number>>>> = {
  'all that are read': { level: 16, upward: 30, upright: 30 },
  'those close by': { level: closest, upward: closest, upright: closest },
}
const ranks: readonly Rank[] = [3, 2, 1, 0]

/**
 * Lettering of a run in one line beside an edge, each as near to its place as the others let it be. Along a level edge it
 * reads level where there is room, else upward. Where there is no room even so, what is wanted least is dropped: all of a
 * rank, or of those close by one after the other.
 */
export function spreadRun({ origin, stops }: Run, edge: Edge, crowding: Crowding, fonts: Fonts): SpreadRun {
  const sorted = [...stops].sort((a, b) => a.at - b.at || a.rank - b.rank)
  const ways: readonly Way[] = isLevel(edge) ? ['level', 'upward'] : ['upright']
  const narrowest = ways.at(-1)!
  const lettered = (stop: Stop, way: Way): Lettered => {
    const text = dimensionText(stop.words, edge, way === 'upward', fonts)
    return { stop, text, room: text.along + white[way] }
  }
  const fewer =
    crowding === 'those close by'
      ? [
          sorted,
          closeBy(
            sorted.map(stop => lettered(stop, narrowest)),
            farthest[crowding][narrowest],
          ),
        ]
      : ranks.map(rank => sorted.filter(stop => stop.rank <= rank))
  const least = fewer.at(-1)!
  for (const kept of fewer) {
    for (const way of ways) {
      const { places, shift } = spreadOut(kept.map(stop => lettered(stop, way)))
      if (shift > farthest[crowding][way] && !(kept.length === least.length && way === narrowest)) continue
      const standing = new Set(kept)
      return { origin, stops: places, shift, dropped: sorted.filter(stop => !standing.has(stop)) }
    }
  }
  throw new RangeError('the least of a run always stands')
}

type Lettered = Omit<SpreadStop, 'place'> & { readonly room: number }

/** In ascending order, each in its place, and the farthest that one stands aside. */
function spreadOut(
  stops: readonly Lettered[],
): Pick<SpreadRun, 'shift'> & { readonly places: readonly SpreadStop[] } {
  const at = spread(
    stops.map(({ stop }) => stop.at),
    stops.map(({ room }) => room),
  )
  const places = stops.map(({ stop, text }, i) => ({ stop, text, place: at[i]! }))
  return {
    places,
    shift: places.reduce((most, { stop, place }) => Math.max(most, Math.abs(place - stop.at)), 0),
  }
}

/**
 * Of stops in ascending order those whose lettering stands no farther aside than `most`: the most wanted have the first
 * choice, and rank 0 always stands. Takes time in step with the number of stops and how many of them stand.
 */
function closeBy(stops: readonly Lettered[], most: number): readonly Stop[] {
  const places = new Map(stops.map(({ stop }, i) => [stop, i]))
  let kept: readonly Lettered[] = []
  for (const one of stops.toSorted((a, b) => a.stop.rank - b.stop.rank)) {
    const next = kept.findIndex(({ stop }) => places.get(stop)! > places.get(one.stop)!)
    const more = kept.toSpliced(next < 0 ? kept.length : next, 0, one)
    if (one.stop.rank === 0 || spreadOut(more).shift <= most) kept = more
  }
  return kept.map(({ stop }) => stop)
}
