import { clearance, doubt, type Hit } from './level-line.ts'
import { int8Array, int32Array, type Memory } from './memory.ts'

/**
 * The rings of an arrangement: which ring a half-chain is in, which connected part a ring belongs to, and its
 * winding numbers, those of every part as if its first ring had none. The last ring stands for the plane far
 * away and is a part of its own.
 */
export type Rings = {
  readonly ring: Int32Array
  readonly part: Int32Array
  readonly first: Int32Array
  readonly second: Int32Array
}

/** Pairs of rings of different parts that bound one face. */
export type Links = [number, number][]

const westOf = (hits: readonly Hit[], { ring }: Rings, k: number) =>
  ring[2 * hits[k]!.chain + (1 - hits[k]!.up)]!
const eastOf = (hits: readonly Hit[], { ring }: Rings, k: number) => ring[2 * hits[k]!.chain + hits[k]!.up]!

/** The part of the arrangement that hit k belongs to. */
export const partOf = (hits: readonly Hit[], { ring, part }: Rings, k: number) =>
  part[ring[2 * hits[k]!.chain]!]!

/**
 * Whether between any two hits of one part whose order is beyond doubt there is one pair of winding numbers.
 *
 * @param unsure of how many hits at either end it is not known what lies beyond them
 */
export function agrees(hits: readonly Hit[], rings: Rings, unsure: 0 | 1): boolean {
  const { part, first, second } = rings
  const clear = (k: number) => k < 1 || k >= hits.length || clearance(hits, k) > doubt
  for (let k = 1 + unsure; k < hits.length - unsure; k++) {
    if (!clear(k - 1) || !clear(k) || !clear(k + 1)) continue
    const to = westOf(hits, rings, k)
    const from = eastOf(hits, rings, k - 1)
    if (part[to] === part[from] && (first[to] !== first[from] || second[to] !== second[from])) return false
  }
  return true
}

/** Links the face left of hit k with what the hit before it, of another part or none, says it is. */
export function linkBefore(hits: readonly Hit[], rings: Rings, k: number, links: Links): void {
  const far = rings.part.length - 1
  links.push([k === 0 ? far : endOfBundle(hits, rings, k - 1, -1), endOfBundle(hits, rings, k, 1)])
}

/**
 * The face before hit k (`step` 1: the hits of its part go on to the right) or behind it (`step` −1). Where the
 * next hits of the part are so near that their order is in doubt, it is found without regard to the order: a
 * face among such a bundle of edges lies before one edge and behind another, only the face at the end has an
 * edge on one side more often.
 */
function endOfBundle(hits: readonly Hit[], rings: Rings, k: number, step: 1 | -1): number {
  const outer = (at: number) => (step === 1 ? westOf(hits, rings, at) : eastOf(hits, rings, at))
  const inner = (at: number) => (step === 1 ? eastOf(hits, rings, at) : westOf(hits, rings, at))
  const balance = new Map<number, number>()
  const count = (r: number, by: number) => balance.set(r, (balance.get(r) ?? 0) + by)
  count(outer(k), 1)
  count(inner(k), -1)
  for (let at = k + step; at >= 0 && at < hits.length; at += step) {
    if (clearance(hits, step === 1 ? at : at + 1) > doubt) break
    if (partOf(hits, rings, at) !== partOf(hits, rings, k)) continue
    count(outer(at), 1)
    count(inner(at), -1)
  }
  for (const [r, balanced] of balance) if (balanced > 0) return r
  return outer(k)
}

/**
 * Shifts the winding numbers of every part so that they are 0 far away and equal where two parts share a face.
 * Nothing is shifted unless all can be.
 *
 * @returns whether the links lead to every part and do not contradict each other
 */
export function settleParts(
  memory: Memory,
  { part, first, second }: Rings,
  parts: number,
  sameFace: readonly (readonly [number, number])[],
): boolean {
  const shift1 = int32Array(memory, parts + 1)
  const shift2 = int32Array(memory, parts + 1)
  const settled = int8Array(memory, parts + 1)
  const links: number[][] = []
  for (let p = 0; p <= parts; p++) links.push([])
  for (let k = 0; k < sameFace.length; k++) {
    const [a, b] = sameFace[k]!
    links[part[a]!]!.push(k)
    links[part[b]!]!.push(k)
  }
  settled[parts] = 1
  const waiting = [parts]
  while (waiting.length > 0) {
    const p = waiting.pop()!
    for (const k of links[p]!) {
      const [a, b] = sameFace[k]!
      const [here, there] = part[a] === p ? [a, b] : [b, a]
      const q = part[there]!
      const w1 = first[here]! + shift1[p]! - first[there]!
      const w2 = second[here]! + shift2[p]! - second[there]!
      if (settled[q] === 1) {
        if (shift1[q] !== w1 || shift2[q] !== w2) return false
        continue
      }
      settled[q] = 1
      shift1[q] = w1
      shift2[q] = w2
      waiting.push(q)
    }
  }
  if (settled.includes(0)) return false
  for (let r = 0; r < part.length; r++) {
    first[r]! += shift1[part[r]!]!
    second[r]! += shift2[part[r]!]!
  }
  return true
}
