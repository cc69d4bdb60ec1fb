/**
 * Cases that once went wrong, each a file named after what did. A contour is a list of segments, a segment
 * [x, y] where it starts, for an arc with [centre x, centre y, radius, turn] behind.
 */
import { readdirSync, readFileSync } from 'node:fs'
import type { Contour, Region } from '../../../src/geometry/shape/contour.ts'
import type { Segment } from '../../../src/geometry/shape/segment.ts'

type Numbers = readonly (readonly number[])[]
export type KeptCase = { readonly first: readonly Numbers[][]; readonly second: readonly Numbers[][] }

export function encodeRegions(regions: readonly Region[]): Numbers[][] {
  return regions.map(r =>
    [r.outer, ...r.holes].map(c =>
      c.segments.map(s =>
        s.kind === 'line'
          ? [s.from.x, s.from.y]
          : [s.from.x, s.from.y, s.centre.x, s.centre.y, s.radius, s.turn],
      ),
    ),
  )
}

export function decodeRegions(regions: readonly (readonly Numbers[])[]): Region[] {
  return regions.map(contours => {
    const [outer, ...holes] = contours.map(decodeContour)
    return { outer: outer!, holes }
  })
}

function decodeContour(numbers: Numbers): Contour {
  const points = numbers.map(([x, y]) => ({ x: x!, y: y! }))
  const segments = numbers.map(([, , cx, cy, radius, turn], i): Segment => {
    const from = points[i]!
    const to = points[(i + 1) % points.length]!
    if (cx === undefined) return { kind: 'line', from, to }
    return { kind: 'arc', from, to, centre: { x: cx, y: cy! }, radius: radius!, turn: turn === 1 ? 1 : -1 }
  })
  return { segments, closed: true }
}

export function keptCases(): { name: string; first: Region[]; second: Region[] }[] {
  const folder = new URL('.', import.meta.url)
  return readdirSync(folder)
    .filter(file => file.endsWith('.json'))
    .sort()
    .map(file => {
      const kept = JSON.parse(readFileSync(new URL(file, folder), 'utf8')) as KeptCase
      return {
        name: file.replace('.json', '').replaceAll('-', ' '),
        first: decodeRegions(kept.first),
        second: decodeRegions(kept.second),
      }
    })
}
