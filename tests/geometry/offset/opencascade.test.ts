import { beforeAll, expect, test } from 'vitest'
import { regionArea } from '../../../src/geometry/measure/area.ts'
import { contourLength } from '../../../src/geometry/measure/length.ts'
import { offsetRegion } from '../../../src/geometry/offset/offset.ts'
import type { Region } from '../../../src/geometry/shape/contour.ts'
import { expectValue } from '../expect-value.ts'
import { gear } from '../generate/gear.ts'
import { openReference, type Reference } from '../opencascade.ts'
import { bentOutline, modellerErrs } from './bent-outline.ts'

let reference: Reference

beforeAll(async () => {
  reference = await openReference()
})

/**
 * The area that the solid modeller gives an offset, all of whose wires are taken as outer ones; undefined where
 * it builds none.
 */
function referenceArea(region: Region, delta: number): number | undefined {
  const { occ, face } = reference
  const maker = new occ.BRepOffsetAPI_MakeOffset(face(region), occ.GeomAbs_JoinType.GeomAbs_Arc, false)
  try {
    maker.Perform(delta, 0)
  } catch {
    return undefined
  }
  if (!maker.IsDone()) return undefined
  const { TopAbs_WIRE, TopAbs_SHAPE } = occ.TopAbs_ShapeEnum
  const wires = new occ.TopExp_Explorer(maker.Shape(), TopAbs_WIRE, TopAbs_SHAPE)
  let area = 0
  for (; wires.More(); wires.Next()) {
    const made = new occ.BRepBuilderAPI_MakeFace(occ.TopoDS.Wire(wires.Current()), true)
    const properties = new occ.GProp_GProps()
    occ.BRepGProp.SurfaceProperties(made.Face(), properties, false, false)
    area += Math.abs(properties.Mass())
  }
  return area
}

/** By how much more than 1e-7 mm·perimeter + 1e-10·area the two differ; undefined where there is nothing to compare. */
function difference(region: Region, delta: number): number | undefined {
  const ours = expectValue(offsetRegion(region, delta))
  if (ours.some(r => r.holes.length > 0)) return undefined
  const theirs = referenceArea(region, delta)
  if (theirs === undefined) return undefined
  const area = ours.reduce((sum, r) => sum + regionArea(r), 0)
  const perimeter = ours.reduce((sum, r) => sum + contourLength(r.outer), 0)
  return Math.abs(area - theirs) - (1e-7 * perimeter + 1e-10 * area)
}

test('areas of offsets of arc outlines are those of a solid modeller', () => {
  let compared = 0
  const apart: string[] = []
  for (let seed = 1; seed <= 300; seed++) {
    const made = bentOutline(seed)
    if (made === undefined || modellerErrs.includes(seed)) continue
    const off = difference(made.region, made.delta)
    if (off === undefined) continue
    compared++
    if (off > 0) apart.push(`seed ${seed}: ${off} mm² too much`)
  }
  expect(apart).toEqual([])
  expect(compared).toBeGreaterThan(200)
})

test('so are those of gears', () => {
  for (const teeth of [5, 12]) {
    for (const delta of [0.5, 1, -0.5, -1]) expect(difference(gear(teeth), delta)).toBeLessThan(0)
  }
})
