import { printable } from '../../number/tolerance.ts'
import { type Cut, type HoleCut, isHole } from './cut.ts'

/** Cuts that are alike on one spot, three or more: every two of them run into each other, and the first stands for all. */
export type Pile<C extends Cut = Cut> = readonly C[]

/** Cuts with their piles sorted out. */
export type Piled<C extends Cut = Cut> = {
  /** Every cut that stands in no pile, and the first of each, in their order. */
  readonly distinct: readonly C[]
  readonly piles: readonly Pile<C>[]
}

/** Two on one spot are said as a pair. */
const fewest = 3

/**
 * Finds the piles in time that grows with the cuts. A row whose spacing was written in the wrong unit, or a cut that was
 * copied two hundred times, has as many pairs as the square of that; whoever asks pairs asks the `distinct` ones, and
 * what the rest of a pile does elsewhere shows when the pile is gone.
 */
export function pilesOf<C extends Cut>(cuts: readonly C[]): Piled<C> {
  const bySpot = new Map<string, C[]>()
  for (const cut of cuts) {
    const spot = spotOf(cut)
    const here = bySpot.get(spot)
    if (here === undefined) bySpot.set(spot, [cut])
    else here.push(cut)
  }
  const piles = [...bySpot.values()].filter(pile => pile.length >= fewest)
  const rest = new Set(piles.flatMap(pile => pile.slice(1)))
  return { distinct: cuts.filter(cut => !rest.has(cut)), piles }
}

/** The same for cuts that are alike on one spot. */
function spotOf(cut: Cut): string {
  const { feature, from, to } = cut
  const place = isHole(cut) ? placeOfHole(cut) : placeOfOutline(cut)
  return [feature.shape.kind, feature.face, ...[from, to].map(steps), ...place].join(' ')
}

/** The side of the square cells in which centres count as one spot, in radii: every two in a cell overlap by far. */
const cell = 1 / 4

function placeOfHole({ bore: { lean, mouth }, centre, radius, layers }: HoleCut): readonly number[] {
  const { x, y } = centre
  const side = cell * radius
  const lies = lean === undefined ? [] : [Math.cos(lean.toward), Math.sin(lean.toward), lean.angle]
  return [
    steps(radius),
    Math.floor(x / side),
    Math.floor(y / side),
    // an angle as a length at the rim
    ...lies.map(part => steps(part * radius)),
    ...(mouth === undefined ? [] : [steps(mouth.diameter.mm)]),
    ...(layers?.map(({ from, to }) => steps(to - from)) ?? []),
  ]
}

/** Of any other cut the outline itself. */
function placeOfOutline({ region: { outer, holes } }: Cut): readonly number[] {
  return [outer, ...holes].flatMap(({ segments }) =>
    segments.flatMap(s =>
      [s.from, ...(s.kind === 'arc' ? [s.centre] : [])].flatMap(p => [steps(p.x), steps(p.y)]),
    ),
  )
}

/** What cannot be told apart in print is alike. */
function steps(mm: number): number {
  return Math.round(mm / printable)
}
