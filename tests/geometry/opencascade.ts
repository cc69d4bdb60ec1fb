import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import start, {
  type gp_Pnt,
  type OpenCascadeInstance,
  type TopoDS_Face,
  type TopoDS_Wire,
} from 'replicad-opencascadejs'
import { pointAt } from '../../src/geometry/measure/along.ts'
import type { Contour, Region } from '../../src/geometry/shape/contour.ts'
import type { Point } from '../../src/geometry/shape/point.ts'
import { reverseContour } from '../../src/geometry/shape/reverse.ts'

/** Another maker's solid modeller, as a reference that knows true arcs. */
export type Reference = {
  readonly face: (region: Region) => TopoDS_Face
  readonly occ: OpenCascadeInstance
}

export async function openReference(): Promise<Reference> {
  const wasm = createRequire(import.meta.url).resolve('replicad-opencascadejs/wasm')
  const occ = await start({ wasmBinary: readFileSync(wasm) } as never)
  return { occ, face: region => faceOf(occ, region) }
}

function faceOf(occ: OpenCascadeInstance, region: Region): TopoDS_Face {
  const maker = new occ.BRepBuilderAPI_MakeFace(wireOf(occ, region.outer), true)
  for (const hole of region.holes) maker.Add(wireOf(occ, reverseContour(hole)))
  return maker.Face()
}

function wireOf(occ: OpenCascadeInstance, contour: Contour): TopoDS_Wire {
  const maker = new occ.BRepBuilderAPI_MakeWire()
  const at = (p: Point): gp_Pnt => new occ.gp_Pnt(p.x, p.y, 0)
  for (const s of contour.segments) {
    const edge =
      s.kind === 'line'
        ? new occ.BRepBuilderAPI_MakeEdge(at(s.from), at(s.to))
        : new occ.BRepBuilderAPI_MakeEdge(
            new occ.GC_MakeArcOfCircle(at(s.from), at(pointAt(s, 0.5)), at(s.to)).Value(),
          )
    maker.Add(edge.Edge())
  }
  return maker.Wire()
}
