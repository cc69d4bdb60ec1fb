import type { Candidate } from './candidate.ts'
import { nobodyStanding } from './standing.ts'

/** How many labels may move on, each out of the way of the next, to make room for one. */
const longestChain = 3
/** A candidate in the way of more labels than this is not forced. */
const mostMoved = 2
/** How often something is moved in search of room for one label; it keeps the time in step with their number. */
const mostTries = 120
/** Rounds in which labels move to better places that others have left. */
const mostRounds = 4

/**
 * Chooses for every label one of its candidates so that no two are in conflict: for as many labels as can be found
 * room for, and then the better places. Labels with the fewest candidates choose first; one that is left over may
 * push others on to places of theirs that are free; at last all move to better places that have become free.
 * The same candidates give the same choice. `undefined` for a label that finds no room.
 */
export function choosePlaces<C extends Candidate>(
  wanted: readonly (readonly C[])[],
): readonly (C | undefined)[] {
  const candidates = wanted.map(list => [...list].sort((a, b) => a.cost - b.cost))
  const standing = nobodyStanding<C>()

  const standFreely = (label: number, among: readonly C[]): boolean => {
    const free = among.find(candidate => standing.inTheWay(label, candidate, 1).length === 0)
    if (free !== undefined) standing.put(label, free)
    return free !== undefined
  }
  const makeRoom = (label: number, chain: number, moving: readonly number[], tries: Tries): boolean => {
    if (standFreely(label, candidates[label]!)) return true
    if (chain === 0) return false
    const nowMoving = [...moving, label]
    return candidates[label]!.some(candidate => {
      const others = standing.inTheWay(label, candidate, mostMoved + 1)
      if (others.length > mostMoved || others.some(other => nowMoving.includes(other))) return false
      if (tries.left-- <= 0) return false
      return standing.attempt(() => {
        for (const other of others) standing.put(other, undefined)
        standing.put(label, candidate)
        return others.every(other => makeRoom(other, chain - 1, nowMoving, tries))
      })
    })
  }
  const improve = (label: number): boolean => {
    const now = standing.at(label)
    const all = candidates[label]!
    return standFreely(label, now === undefined ? all : all.slice(0, all.indexOf(now)))
  }

  const order = candidates
    .map((list, label) => ({ label, count: list.length }))
    .sort((a, b) => a.count - b.count || a.label - b.label)
    .map(({ label }) => label)
  const left = order.filter(label => !standFreely(label, candidates[label]!))
  for (const label of left) makeRoom(label, longestChain, [], { left: mostTries })
  for (let round = 0; round < mostRounds; round++) if (order.filter(improve).length === 0) break
  return candidates.map((_, label) => standing.at(label))
}

type Tries = { left: number }
