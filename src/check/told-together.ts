import type { Placed } from '../model/feature.ts'

/** Two cuts that meet. */
export type Meeting = {
  readonly first: Placed
  readonly second: Placed
  /** They stand in a pile: all that meets here is one thing. */
  readonly piled?: boolean
}

/**
 * The meetings that are said in one finding each: those of the same two names, as of two rows; and all of a crowd that
 * is denser than {@link mostPairs}, or a pile, so that there are never more than so many findings for each cut.
 */
export function toldTogether<M extends Meeting>(meetings: readonly M[]): readonly (readonly M[])[] {
  const crowds = new Map<string, Crowd<M>>()
  const headOf = joined(meetings)
  for (const meeting of meetings) {
    const [one, other] = namesOf(meeting)
    const head = headOf(one)
    const crowd: Crowd<M> = crowds.get(head) ?? { names: new Set(), pairs: new Map(), all: [] }
    crowds.set(head, crowd)
    crowd.names.add(one).add(other)
    crowd.all.push(meeting)
    const pair = [one, other].sort().join(' / ')
    const alike = crowd.pairs.get(pair)
    if (alike === undefined) crowd.pairs.set(pair, [meeting])
    else alike.push(meeting)
  }
  return [...crowds.values()].flatMap(crowd => (isDense(crowd) ? [crowd.all] : [...crowd.pairs.values()]))
}

/** As many pairs for each name are said one by one, and what lies to what is clear then. */
const mostPairs = 2

type Crowd<M> = {
  readonly names: Set<string>
  readonly pairs: Map<string, M[]>
  readonly all: M[]
}

function isDense({ names, pairs, all }: Crowd<Meeting>): boolean {
  return pairs.size > mostPairs * names.size || all.some(({ piled }) => piled)
}

function namesOf({ first, second }: Meeting): readonly [string, string] {
  return [nameOf(first), nameOf(second)]
}

/** The name that all the holes of a row have. */
function nameOf({ cut, face }: Placed): string {
  return `${cut} ${face}`
}

/** For a name, one of all those that it is joined with through meetings, which is the same for each of them. */
function joined(meetings: readonly Meeting[]): (name: string) => string {
  const next = new Map<string, string>()
  const headOf = (name: string): string => {
    let at = name
    for (let to = next.get(at); to !== undefined; to = next.get(at)) {
      // the next time the way is half as long
      const beyond = next.get(to)
      if (beyond !== undefined) next.set(at, beyond)
      at = to
    }
    return at
  }
  for (const meeting of meetings) {
    const [one, other] = namesOf(meeting).map(headOf) as [string, string]
    if (one !== other) next.set(other, one)
  }
  return headOf
}
