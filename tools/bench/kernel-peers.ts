import Flatten from '@flatten-js/core'
import { EndType, FillRule, inflatePathsD, JoinType, unionD } from 'clipper2-ts'
import type { PathsD } from 'clipper2-wasm/dist/clipper2z'
import { chordPoints } from '../../src/geometry/approximate/chords.ts'
import type { Contour, Region } from '../../src/geometry/shape/contour.ts'
import type { Point } from '../../src/geometry/shape/point.ts'
import { startAngle, sweep } from '../../src/geometry/shape/segment.ts'
import { printable } from '../../src/number/tolerance.ts'
import { type Clipper, loadClipper } from '../../tests/geometry/boolean/clipper.ts'

/** Another library, made ready for an operation on outlines: what it is given is in its own form before the clock starts. */
export type Peer = {
  readonly name: string
  /** What its version is asked of. */
  readonly library: string
  readonly offset?: (regions: readonly Region[], delta: number) => Ready
  readonly union: (pairs: readonly (readonly [Region, Region])[]) => Ready
}
export type Ready = { readonly run: () => void; readonly dispose?: () => void }

/** Decimals that the polygon libraries round coordinates to: finer than their chords by far. */
const decimals = 4

/** The peers. Those that know only polygons get chords within `printable` of the arcs. */
export async function loadPeers(): Promise<readonly Peer[]> {
  const clipper = await loadClipper()
  return [wasm(clipper, 'left there'), wasm(clipper, 'read'), script, arcs]
}

/**
 * A library outside of JavaScript's own memory. Its results stay there, or they are read: then there is a point for every
 * corner in the end, as with the others, which a program in JavaScript can go on with.
 */
function wasm(clipper: Clipper, results: 'left there' | 'read'): Peer {
  const { InflatePathsD, UnionD, JoinType, EndType, FillRule } = clipper.module
  const pathsOf = (region: Region) => clipper.paths([region], printable)
  const done = (found: PathsD): void => {
    if (results === 'read') pointsOf(found)
    found.delete()
  }
  return {
    name: results === 'read' ? 'clipper2-wasm, read' : 'clipper2-wasm',
    library: 'clipper2-wasm',
    offset: (regions, delta) => {
      const all = regions.map(pathsOf)
      return {
        run: () => {
          for (const paths of all) {
            done(InflatePathsD(paths, delta, JoinType.Round, EndType.Polygon, 2, decimals, printable))
          }
        },
        dispose: () => release(all),
      }
    },
    union: pairs => {
      const all = pairs.map(([a, b]) => [pathsOf(a), pathsOf(b)] as const)
      return {
        run: () => {
          for (const [a, b] of all) done(UnionD(a, b, FillRule.NonZero, decimals))
        },
        dispose: () => release(all.flat()),
      }
    },
  }
}

/** Three numbers a corner: x, y and one of the caller's own. */
const numbersEach = 3

/** The corners of paths, by the quickest way that there is out of the library's memory. */
function pointsOf(list: PathsD): readonly (readonly Point[])[] {
  return Array.from({ length: list.size() }, (_, i) => {
    const path = list.get(i)
    const numbers = path.view()
    const points = new Array<Point>(path.size())
    for (let k = 0; k < points.length; k++) {
      points[k] = { x: numbers[numbersEach * k]!, y: numbers[numbersEach * k + 1]! }
    }
    path.delete()
    return points
  })
}

/** What lies in the memory of WebAssembly is not collected as garbage. */
function release(all: readonly PathsD[]): void {
  for (const paths of all) paths.delete()
}

const chorded = ({ outer, holes }: Region) => [outer, ...holes].map(c => [...chordPoints(c, printable)])

const script: Peer = {
  name: 'clipper2-ts',
  library: 'clipper2-ts',
  offset: (regions, delta) => {
    const all = regions.map(chorded)
    return {
      run: () => {
        for (const paths of all) {
          inflatePathsD(paths, delta, JoinType.Round, EndType.Polygon, 2, decimals, printable)
        }
      },
    }
  },
  union: pairs => {
    const all = pairs.map(([a, b]) => [chorded(a), chorded(b)] as const)
    return {
      run: () => {
        for (const [a, b] of all) unionD(a, b, FillRule.NonZero, decimals)
      },
    }
  },
}

/** It keeps arcs, as we do, and has no offset. */
const arcs: Peer = {
  name: '@flatten-js/core',
  library: '@flatten-js/core',
  union: pairs => {
    const all = pairs.map(([a, b]) => [face(a), face(b)] as const)
    return {
      run: () => {
        for (const [a, b] of all) Flatten.BooleanOperations.unify(a, b)
      },
    }
  },
}

function face({ outer, holes }: Region): Flatten.Polygon {
  const polygon = new Flatten.Polygon()
  for (const contour of [outer, ...holes]) polygon.addFace(edgesOf(contour))
  return polygon
}

function edgesOf({ segments }: Contour): (Flatten.Segment | Flatten.Arc)[] {
  return segments.map(s => {
    if (s.kind === 'line') {
      return new Flatten.Segment(new Flatten.Point(s.from.x, s.from.y), new Flatten.Point(s.to.x, s.to.y))
    }
    const start = startAngle(s)
    const centre = new Flatten.Point(s.centre.x, s.centre.y)
    return new Flatten.Arc(centre, s.radius, start, start + sweep(s), s.turn === 1)
  })
}
