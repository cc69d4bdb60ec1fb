import type { ShapePlan } from '../../plan/plan.ts'
import type { Context } from './context.ts'
import { buildDisc } from './disc.ts'
import { buildOutlineShape } from './outline-shape.ts'
import { buildRectangle } from './rectangle.ts'
import type { NoShape, Shape, ShapeBuilder } from './shape-builder.ts'
import { buildTaper } from './taper.ts'

/** One line a kind of shape; a kind without its line fails the type check. */
const builders: { readonly [K in ShapePlan['kind']]: ShapeBuilder<K> } = {
  rectangle: buildRectangle,
  outline: buildOutlineShape,
  taper: buildTaper,
  disc: buildDisc,
}

export function buildShape(context: Context, plan: ShapePlan): Shape | NoShape | undefined {
  // the registry pairs every kind with its own builder; the compiler cannot follow the pairing through the index
  const build = builders[plan.kind] as (context: Context, plan: ShapePlan) => Shape | NoShape | undefined
  return build(context, plan)
}
