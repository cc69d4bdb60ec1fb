import type { Bounds } from '../../geometry/shape/contour.ts'
import { type Candidate, conflict, reachOf } from './candidate.ts'
import { emptyGrid } from './grid.ts'

/** Which candidate each label stands at, label by its number; and what would be in whose way. */
export type Standing<C> = {
  readonly at: (label: number) => C | undefined
  readonly put: (label: number, candidate: C | undefined) => void
  /** The labels that a candidate of `label` is in the way of; the search ends at `most`. */
  readonly inTheWay: (label: number, candidate: C, most: number) => readonly number[]
  /** Tries something, and puts all back where it stood when that fails. */
  readonly attempt: (what: () => boolean) => boolean
}

/**
 * The graph of conflicts is never built: what stands is looked up by where it is, so that a question costs the same
 * however many labels there are.
 */
export function nobodyStanding<C extends Candidate>(): Standing<C> {
  type Stood = { readonly label: number; readonly candidate: C; readonly reach: Bounds }
  const stood = new Map<number, Stood>()
  const byPlace = emptyGrid<Stood>()
  const journal: (readonly [label: number, before: C | undefined])[] = []

  const move = (label: number, candidate: C | undefined): void => {
    const before = stood.get(label)
    if (before !== undefined) byPlace.remove(before.reach, before)
    stood.delete(label)
    if (candidate === undefined) return
    const now = { label, candidate, reach: reachOf(candidate) }
    byPlace.add(now.reach, now)
    stood.set(label, now)
  }
  return {
    at: label => stood.get(label)?.candidate,
    put: (label, candidate) => {
      journal.push([label, stood.get(label)?.candidate])
      move(label, candidate)
    },
    inTheWay: (label, candidate, most) => {
      const found = new Set<number>()
      byPlace.some(reachOf(candidate), other => {
        if (other.label !== label && conflict(candidate, other.candidate)) found.add(other.label)
        return found.size >= most
      })
      return [...found]
    },
    attempt: what => {
      const mark = journal.length
      if (what()) return true
      while (journal.length > mark) move(...journal.pop()!)
      return false
    },
  }
}
