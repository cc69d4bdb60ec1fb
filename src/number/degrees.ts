/**
 * The sine of an angle in degrees. Exact at every multiple of 30° where it is 0, ±1/2 or ±1, which a
 * calculation through radians is not.
 */
export function sinDegrees(angleDegrees: number): number {
  const turned = ((angleDegrees % 360) + 360) % 360
  return turned > 180 ? -sinOfHalfTurn(turned - 180) : sinOfHalfTurn(turned)
}

/** The cosine of an angle in degrees, exact where `sinDegrees` is. */
export function cosDegrees(angleDegrees: number): number {
  return sinDegrees(90 - (angleDegrees % 360))
}

/** The tangent of an angle in degrees; infinite at 90° and 270°, exactly ±1 at the odd multiples of 45°. */
export function tanDegrees(angleDegrees: number): number {
  return sinDegrees(angleDegrees) / cosDegrees(angleDegrees)
}

/** From 0° to 180°. */
function sinOfHalfTurn(angleDegrees: number): number {
  const acute = angleDegrees > 90 ? 180 - angleDegrees : angleDegrees
  if (acute === 30) return 0.5
  return acute > 45 ? Math.cos(radians(90 - acute)) : Math.sin(radians(acute))
}

export function radians(angleDegrees: number): number {
  return (angleDegrees * Math.PI) / 180
}

export function degrees(angle: number): number {
  return (angle * 180) / Math.PI
}
