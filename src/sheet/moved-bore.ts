import { apply, type Matrix } from '../geometry/shape/matrix.ts'
import type { Bore } from '../model/feature.ts'

/** A bore as another frame sees it; `matrix` is a shift with a turn. */
export function movedBore(matrix: Matrix, bore: Bore): Bore {
  const centre = apply(matrix, bore.centre)
  const { lean } = bore
  if (lean === undefined) return { ...bore, centre }
  return { ...bore, centre, lean: { ...lean, toward: lean.toward + Math.atan2(matrix.b, matrix.a) } }
}
