/**
 * How many whole steps come nearest to a value; a value half-way between two goes away from zero. A value that
 * misses half-way by no more than `slack` counts as half-way, so that one size calculated along two ways is not
 * shown as two.
 *
 * @throws RangeError when the value is not finite or the step not positive
 */
export function nearestMultiple(value: number, step: number, slack = 0): number {
  if (!Number.isFinite(value) || !(step > 0)) throw new RangeError(`no multiple of ${step} is near ${value}`)
  const steps = Math.floor((Math.abs(value) + slack) / step + 0.5)
  return value < 0 && steps > 0 ? -steps : steps
}
