import { beforeAll, expect, test } from 'vitest'
import { regionArea } from '../../../src/geometry/measure/area.ts'
import { contourLength } from '../../../src/geometry/measure/length.ts'
import { offsetRegion } from '../../../src/geometry/offset/offset.ts'
import type { Region } from '../../../src/geometry/shape/contour.ts'
import { expectValue } from '../expect-value.ts'
import { gear } from '../generate/gear.ts'
import { randomFrom } from '../generate/random.ts'
import { plate, roundaboutOutline } from '../generate/random-outline.ts'
import { openReference, type Reference } from '../opencascade.ts'
import { crossesItself } from './crosses-itself.ts'

let reference: Reference

beforeAll(async () => {
  reference = await openReference()
})

/** The area that the solid modeller gives an offset; undefined where it builds none. Its wires are all outer ones. */
function referenceArea(region: Region, delta: number): number | undefined {
  const { occ, face } = reference
  try {
    const maker = new occ.BRepOffsetAPI_MakeOffset(face(region), occ.GeomAbs_JoinType.GeomAbs_Arc, false)
    maker.Perform(delta, 0)
    if (!maker.IsDone()) return undefined
    const wires = new occ.TopExp_Explorer(
      maker.Shape(),
      occ.TopAbs_ShapeEnum.TopAbs_WIRE,
      occ.TopAbs_ShapeEnum.TopAbs_SHAPE,
    )
    let area = 0
    for (; wires.More(); wires.Next()) {
      const made = new occ.BRepBuilderAPI_MakeFace(occ.TopoDS.Wire(wires.Current()), true)
      const properties = new occ.GProp_GProps()
      occ.BRepGProp.SurfaceProperties(made.Face(), properties, false, false)
      area += Math.abs(properties.Mass())
    }
    return area
  } catch (e) {
    if (Math.random() < 0.02) console.log(String(e).slice(0, 300))
    return undefined
  }
}

test('probe', () => {
  let compared = 0,
    none = 0
  for (let seed = 1; seed <= 300; seed++) {
    const random = randomFrom(seed)
    const region: Region = { outer: roundaboutOutline(random, 3 + (seed % 9), 0.6), holes: [] }
    if (crossesItself([region.outer])) continue
    const delta = (seed % 2 === 0 ? 1 : -1) * (0.1 + 2 * random())
    const ours = expectValue(offsetRegion(region, delta))
    if (ours.some(r => r.holes.length > 0)) continue
    const theirs = referenceArea(region, delta)
    if (theirs === undefined) {
      none++
      continue
    }
    const area = ours.reduce((s, r) => s + regionArea(r), 0)
    const per = ours.reduce((s, r) => s + contourLength(r.outer), 0)
    compared++
    const off = Math.abs(area - theirs)
    if (off > 1e-7 * per + 1e-10 * area) console.log(seed, delta, ours.length, area, theirs, off)
  }
  console.log(compared, none)
  expect(compared).toBeGreaterThan(100)
})
void gear
void plate
