import type { Region } from '../shape/contour.ts'
import type { Outcome } from '../shape/outcome.ts'
import type { Memory } from './memory.ts'
import { openContour, overlay } from './overlay.ts'
import { addContour, createPack, weigh } from './pack.ts'
import { runsLeft } from './runs-left.ts'

/**
 * Everything that lies in a region of either list, or of several.
 *
 * @param memory to work in, for who makes many: `createMemory()`; the same for the other three
 */
export function union(
  first: readonly Region[],
  second: readonly Region[] = [],
  memory?: Memory,
): Outcome<readonly Region[]> {
  return combine('union', first, second, (a, b) => a > 0 || b > 0, memory)
}

/** What lies in a region of the first list and in none of the second. */
export function difference(
  first: readonly Region[],
  second: readonly Region[],
  memory?: Memory,
): Outcome<readonly Region[]> {
  return combine('difference', first, second, (a, b) => a > 0 && b <= 0, memory)
}

/** What lies in a region of the first list and in one of the second. */
export function intersection(
  first: readonly Region[],
  second: readonly Region[],
  memory?: Memory,
): Outcome<readonly Region[]> {
  return combine('intersection', first, second, (a, b) => a > 0 && b > 0, memory)
}

/** What lies in a region of one list and in none of the other. */
export function exclusiveOr(
  first: readonly Region[],
  second: readonly Region[],
  memory?: Memory,
): Outcome<readonly Region[]> {
  return combine('exclusiveOr', first, second, (a, b) => a > 0 !== b > 0, memory)
}

function combine(
  operation: string,
  first: readonly Region[],
  second: readonly Region[],
  inside: (first: number, second: number) => boolean,
  memory: Memory | undefined,
): Outcome<readonly Region[]> {
  let segments = 0
  for (const list of [first, second]) {
    for (const region of list) {
      segments += region.outer.segments.length
      for (const hole of region.holes) segments += hole.segments.length
    }
  }
  const pack = createPack(segments, memory)
  const operands = [first, second] as const
  for (const operand of [0, 1] as const) {
    for (const region of operands[operand]) {
      const contours = [region.outer, ...region.holes]
      for (let k = 0; k < contours.length; k++) {
        const contour = contours[k]!
        // roles are owned: an outer contour fills and a hole empties, whichever way they run
        const fills = k === 0 ? 1 : -1
        const begin = pack.segmentCount
        const at = addContour(pack, contour, operand, fills)
        if (at !== -1) return openContour(operation, k, at, { first, second })
        if (!runsLeft(pack, begin)) weigh(pack, begin, operand, -fills)
      }
    }
  }
  return overlay(pack, inside, operation, { first, second })
}
