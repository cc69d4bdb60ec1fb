/** clipper2-wasm as another opinion: it sees every arc as chords. */
import { createRequire } from 'node:module'
import type { MainModule, PathsD } from 'clipper2-wasm/dist/clipper2z'
import { chordPoints } from '../../../src/geometry/approximate/chords.ts'
import { signedArea } from '../../../src/geometry/measure/area.ts'
import type { Contour, Region } from '../../../src/geometry/shape/contour.ts'
import type { Point } from '../../../src/geometry/shape/point.ts'

export type Clipper = {
  readonly module: MainModule
  /** Contours as paths, outer ones counter-clockwise and holes clockwise, chords within `deviation` of the arcs. */
  readonly paths: (regions: readonly Region[], deviation: number) => PathsD
  readonly points: (paths: PathsD) => Point[][]
}

export async function loadClipper(): Promise<Clipper> {
  const require = createRequire(import.meta.url)
  const factory = require('clipper2-wasm') as unknown
  const make = (
    typeof factory === 'function' ? factory : (factory as { default: unknown }).default
  ) as () => Promise<MainModule>
  const module = await make()

  const pathOf = (contour: Contour, left: boolean, deviation: number) => {
    const points = [...chordPoints(contour, deviation)]
    if (signedArea(contour) > 0 !== left) points.reverse()
    return module.MakePathD(points.flatMap(p => [p.x, p.y]))
  }

  const paths = (regions: readonly Region[], deviation: number): PathsD => {
    const made = new module.PathsD()
    for (const { outer, holes } of regions) {
      for (const contour of [outer, ...holes]) {
        const path = pathOf(contour, contour === outer, deviation)
        made.push_back(path)
        path.delete()
      }
    }
    return made
  }

  const points = (list: PathsD): Point[][] =>
    Array.from({ length: list.size() }, (_, i) => {
      const path = list.get(i)
      return Array.from({ length: path.size() }, (_, k) => {
        const p = path.get(k)
        return { x: p.x, y: p.y }
      })
    })
  return { module, paths, points }
}
