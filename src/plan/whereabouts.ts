import type { Finding, Place } from '../finding/finding.ts'
import { excerpt } from '../finding/visible.ts'
import { isList, isMapping, type Mapping, placeOf, sourceOf } from '../yaml/document/tree.ts'
import { cutName } from './cut/cut-name.ts'
import { maxIdLength } from './limits.ts'

type Range = { readonly from: number; readonly to: number; readonly part: string; readonly feature?: string }

/**
 * Says of each place of a finding which part and which cut it lies in, so that the report of a plan that cannot
 * be read is grouped like that of one that can.
 */
export function whereabouts(plan: Mapping): (finding: Finding) => Finding {
  const ranges = rangesOf(plan)
  const placed = (place: Place): Place => {
    const at = place.source?.from
    if (at === undefined) return place
    const around = ranges.findLast(({ from, to }) => from <= at && at < to)
    if (!around) return place
    const { part, feature } = around
    return feature === undefined ? { ...place, part } : { ...place, part, feature }
  }
  return finding => ({ ...finding, places: finding.places.map(placed) })
}

/** Parts from their key on, and behind each part its cuts, so that the last range around a place is the closest. */
function rangesOf(plan: Mapping): readonly Range[] {
  const { parts } = plan
  if (!parts || !isMapping(parts)) return []
  const ranges: Range[] = []
  for (const [name, key] of placeOf(parts).keys) {
    const node = parts[name]!
    const part = excerpt(name, maxIdLength)
    ranges.push({ from: key.from, to: Math.max(key.to, sourceOf(node).to), part })
    const cuts = isMapping(node) ? node.cuts : undefined
    if (!cuts || !isList(cuts)) continue
    for (const cut of cuts) {
      const feature = cutName(cut)
      if (feature) ranges.push({ ...sourceOf(cut), part, feature: excerpt(feature.text, maxIdLength) })
    }
  }
  return ranges
}
