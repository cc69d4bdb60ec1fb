import { signedArea } from '../measure/area.ts'
import type { Contour } from '../shape/contour.ts'

/**
 * Whether a closed contour runs counter-clockwise, by the sign of its area. The circular segments of the arcs are
 * not measured but kept between bounds (two thirds of chord times sagitta, the parabola's, and π/4 of it, the half
 * circle's), which nearly always decides and is much quicker.
 */
export function runsLeft(contour: Contour): boolean {
  const { segments } = contour
  const corner = segments[0]?.from
  if (corner === undefined) return true
  const { x: ox, y: oy } = corner
  let twice = 0
  let doubt = 0
  for (const s of segments) {
    const { from, to } = s
    twice += (from.x - ox) * (to.y - oy) - (from.y - oy) * (to.x - ox)
    if (s.kind === 'line') continue
    const dx = to.x - from.x
    const dy = to.y - from.y
    const chordSquared = dx * dx + dy * dy
    const r = s.radius
    // the centre lies left of the chord of a left arc of less than a half turn
    const high = s.turn * (dx * (s.centre.y - from.y) - dy * (s.centre.x - from.x)) < 0
    if (high) return signedArea(contour) >= 0
    const sagitta = r - Math.sqrt(Math.max(0, r * r - chordSquared / 4))
    const box = Math.sqrt(chordSquared) * sagitta
    twice += s.turn * segmentMiddle * box
    doubt += segmentSpread * box
  }
  return Math.abs(twice) > doubt ? twice > 0 : signedArea(contour) >= 0
}

/** Twice the area of a circular segment lies between 4/3 and π/2 of chord times sagitta: the middle, and how far off. */
const segmentMiddle = (4 / 3 + Math.PI / 2) / 2
const segmentSpread = (Math.PI / 2 - 4 / 3) / 2
