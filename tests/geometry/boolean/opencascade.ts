/** replicad-opencascadejs as a judge of areas: it keeps arcs and works in doubles, with a tolerance of 1e-7. */
import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import start, { type TopoDS_Face, type TopoDS_Shape, type TopoDS_Wire } from 'replicad-opencascadejs'
import { pointAt } from '../../../src/geometry/measure/along.ts'
import type { Contour, Region } from '../../../src/geometry/shape/contour.ts'

export type Judge = {
  readonly area: (operation: 'Fuse' | 'Common' | 'Cut', first: Region, second: Region) => number
}

export async function loadOpenCascade(): Promise<Judge> {
  const wasm = createRequire(import.meta.url).resolve('replicad-opencascadejs/wasm')
  const oc = await start({ wasmBinary: readFileSync(wasm) } as Parameters<typeof start>[0])

  const wire = (contour: Contour): TopoDS_Wire => {
    const builder = new oc.BRepBuilderAPI_MakeWire()
    for (const s of contour.segments) {
      const at = (share: number) => {
        const p = pointAt(s, share)
        return new oc.gp_Pnt(p.x, p.y, 0)
      }
      const edge =
        s.kind === 'line'
          ? new oc.BRepBuilderAPI_MakeEdge(at(0), at(1))
          : new oc.BRepBuilderAPI_MakeEdge(new oc.GC_MakeArcOfCircle(at(0), at(0.5), at(1)).Value())
      builder.Add(edge.Edge())
    }
    return builder.Wire()
  }

  /** Holes run against the outer contour, as the kernel makes them. */
  const face = ({ outer, holes }: Region): TopoDS_Face => {
    const builder = new oc.BRepBuilderAPI_MakeFace(wire(outer), true)
    for (const hole of holes) builder.Add(wire(hole))
    return builder.Face()
  }

  const areaOf = (shape: TopoDS_Shape): number => {
    const properties = new oc.GProp_GProps()
    oc.BRepGProp.SurfaceProperties(shape, properties, false, false)
    return properties.Mass()
  }

  const operations = {
    Fuse: oc.BRepAlgoAPI_Fuse,
    Common: oc.BRepAlgoAPI_Common,
    Cut: oc.BRepAlgoAPI_Cut,
  }
  return {
    area(operation, first, second) {
      const made = new operations[operation](face(first), face(second), new oc.Message_ProgressRange())
      return areaOf(made.Shape())
    },
  }
}
