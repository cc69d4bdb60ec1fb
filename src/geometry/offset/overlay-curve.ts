import { overlay } from '../boolean/overlay.ts'
import { arcTo, closePath, createPack, lineTo, moveTo } from '../boolean/pack.ts'
import type { Region } from '../shape/contour.ts'
import type { Outcome } from '../shape/outcome.ts'
import { type PackedCurve, roleEdge, stride } from './packed-curve.ts'
import type { Origin } from './ring-contour.ts'

/**
 * The regions of positive winding number of a curve that touches or overlaps itself: its full arrangement,
 * with crossings snapped and coincident edges merged.
 *
 * @param asked what the caller was asked to do, the case that a fault names
 */
export function overlayCurve(
  curve: PackedCurve,
  { edges, joinTag }: Origin,
  asked: { readonly operation: string; readonly input: unknown },
): Outcome<readonly Region[]> {
  const { data, role, source, chains } = curve
  const pack = createPack(curve.count)
  for (let c = 0; c < chains.length; c++) {
    const begin = chains[c]!
    const end = c + 1 === chains.length ? curve.count : chains[c + 1]!
    moveTo(pack, data[begin * stride]!, data[begin * stride + 1]!)
    for (let k = begin; k < end; k++) {
      const at = k * stride
      const tag = role[k] === roleEdge ? edges[source[k]!]!.tag : joinTag
      const turn = data[at + 7]!
      const x = data[at + 2]!
      const y = data[at + 3]!
      if (turn === 0) lineTo(pack, x, y, tag)
      else arcTo(pack, x, y, data[at + 4]!, data[at + 5]!, turn > 0 ? 1 : -1, tag)
    }
    closePath(pack)
  }
  return overlay(pack, winding => winding > 0, asked.operation, asked.input)
}
