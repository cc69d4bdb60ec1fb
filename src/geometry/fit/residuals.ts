/** How well a fit fits. A residual is a distance in millimetres, one for each point in its order. */
export type Residuals = {
  readonly residuals: readonly number[]
  /** The root of the mean square of the residuals. */
  readonly rms: number
  /** The largest size of a residual, and the number of its point, counted from 0. */
  readonly worst: number
  readonly worstPoint: number
}

export function summarise(residuals: readonly number[]): Residuals {
  let squares = 0
  let worst = 0
  let worstPoint = 0
  residuals.forEach((r, i) => {
    squares += r * r
    if (Math.abs(r) > worst) {
      worst = Math.abs(r)
      worstPoint = i
    }
  })
  return { residuals, rms: Math.sqrt(squares / residuals.length), worst, worstPoint }
}
