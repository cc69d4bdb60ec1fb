import type { Point } from '../../geometry/shape/point.ts'
import { writeDecimal } from '../../number/write-decimal.ts'
import type { Outline } from '../../text/outline.ts'

/** The operators that fill an outline given in ems, in units of which an em has `unitsPerEm`. */
export function outlineOperators(outline: Outline, unitsPerEm: number): readonly string[] {
  if (outline.length === 0) return []
  const pair = (p: Point): string =>
    `${writeDecimal(p.x * unitsPerEm, 3)} ${writeDecimal(p.y * unitsPerEm, 3)}`
  const out: string[] = []
  let at: Point = { x: 0, y: 0 }
  for (const step of outline) {
    switch (step.kind) {
      case 'move':
        out.push(`${pair(step.to)} m`)
        break
      case 'line':
        out.push(`${pair(step.to)} l`)
        break
      case 'quadratic':
        // PDF has cubic curves only; the same curve has its controls two thirds of the way to the one control
        out.push(
          `${pair(twoThirds(at, step.control))} ${pair(twoThirds(step.to, step.control))} ${pair(step.to)} c`,
        )
        break
      case 'cubic':
        out.push(`${pair(step.control1)} ${pair(step.control2)} ${pair(step.to)} c`)
        break
      case 'close':
        out.push('h')
        continue
    }
    at = step.to
  }
  return [...out, 'f']
}

function twoThirds(from: Point, to: Point): Point {
  return { x: from.x + (2 / 3) * (to.x - from.x), y: from.y + (2 / 3) * (to.y - from.y) }
}
