import Flatten from '@flatten-js/core'
import { EndType, FillRule, inflatePathsD, JoinType, unionD } from 'clipper2-ts'
import type { PathsD } from 'clipper2-wasm/dist/clipper2z'
import { chordPoints } from '../../src/geometry/approximate/chords.ts'
import type { Contour, Region } from '../../src/geometry/shape/contour.ts'
import { startAngle, sweep } from '../../src/geometry/shape/segment.ts'
import { printable } from '../../src/number/tolerance.ts'
import { type Clipper, loadClipper } from '../../tests/geometry/boolean/clipper.ts'

/**
 * Another library, made ready for an operation on outlines: what it is given is in its own form before the clock
 * starts, and its results are left in it.
 */
export type Peer = {
  readonly name: string
  readonly offset?: (regions: readonly Region[], delta: number) => Ready
  readonly union: (pairs: readonly (readonly [Region, Region])[]) => Ready
}
export type Ready = { readonly run: () => void; readonly dispose?: () => void }

/** Decimals that the polygon libraries round coordinates to: finer than their chords by far. */
const decimals = 4

/** The peers. Those that know only polygons get chords within `printable` of the arcs. */
export async function loadPeers(): Promise<readonly Peer[]> {
  return [wasm(await loadClipper()), script, arcs]
}

function wasm(clipper: Clipper): Peer {
  const { InflatePathsD, UnionD, JoinType, EndType, FillRule } = clipper.module
  const pathsOf = (region: Region) => clipper.paths([region], printable)
  return {
    name: 'clipper2-wasm',
    offset: (regions, delta) => {
      const all = regions.map(pathsOf)
      return {
        run: () => {
          for (const paths of all) {
            InflatePathsD(paths, delta, JoinType.Round, EndType.Polygon, 2, decimals, printable).delete()
          }
        },
        dispose: () => release(all),
      }
    },
    union: pairs => {
      const all = pairs.map(([a, b]) => [pathsOf(a), pathsOf(b)] as const)
      return {
        run: () => {
          for (const [a, b] of all) UnionD(a, b, FillRule.NonZero, decimals).delete()
        },
        dispose: () => release(all.flat()),
      }
    },
  }
}

/** What lies in the memory of WebAssembly is not collected as garbage. */
function release(all: readonly PathsD[]): void {
  for (const paths of all) paths.delete()
}

const chorded = ({ outer, holes }: Region) => [outer, ...holes].map(c => [...chordPoints(c, printable)])

const script: Peer = {
  name: 'clipper2-ts',
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
