import type { Point } from '../../src/geometry/shape/point.ts'
import { cubic, type ReadCurve, straight } from './read-back.ts'

/** Path data as chains of curves, by SVG 2, chapter 9. */
export function readPathData(data: string): readonly { curves: ReadCurve[]; closed: boolean }[] {
  const tokens = data.match(/[A-Za-z]|[-+]?(?:\d+\.?\d*|\.\d+)(?:[eE][-+]?\d+)?/g) ?? []
  if (tokens.join('') !== data.replace(/[\s,]+/g, '')) throw new Error(`cannot read the path ${data}`)
  const chains: { curves: ReadCurve[]; closed: boolean }[] = []
  let i = 0
  let command = ''
  let start: Point = { x: 0, y: 0 }
  let at = start
  const number = (): number => {
    const value = Number(tokens[i++])
    if (Number.isNaN(value)) throw new Error(`a number is missing in the path ${data}`)
    return value
  }
  const point = (relative: boolean): Point => {
    const x = number()
    const y = number()
    return relative ? { x: at.x + x, y: at.y + y } : { x, y }
  }
  const add = (to: Point, curve: ReadCurve): void => {
    chains.at(-1)!.curves.push(curve)
    at = to
  }
  while (i < tokens.length) {
    if (/[A-Za-z]/.test(tokens[i]!)) command = tokens[i++]!
    const relative = command === command.toLowerCase()
    switch (command.toUpperCase()) {
      case 'M':
        start = point(relative)
        at = start
        chains.push({ curves: [], closed: false })
        command = relative ? 'l' : 'L'
        break
      case 'L': {
        const to = point(relative)
        add(to, straight(at, to))
        break
      }
      case 'H': {
        const to = { x: number() + (relative ? at.x : 0), y: at.y }
        add(to, straight(at, to))
        break
      }
      case 'V': {
        const to = { x: at.x, y: number() + (relative ? at.y : 0) }
        add(to, straight(at, to))
        break
      }
      case 'Q': {
        const [control, to] = [point(relative), point(relative)]
        const near = (p: Point): Point => ({
          x: p.x + (2 / 3) * (control.x - p.x),
          y: p.y + (2 / 3) * (control.y - p.y),
        })
        add(to, cubic(at, near(at), near(to), to))
        break
      }
      case 'C': {
        const [control1, control2, to] = [point(relative), point(relative), point(relative)]
        add(to, cubic(at, control1, control2, to))
        break
      }
      case 'A': {
        const [rx, ry, turned, large, sweep] = [number(), number(), number(), number(), number()]
        if (rx !== ry || turned !== 0) throw new Error('an arc of ours is part of a circle')
        const to = point(relative)
        add(to, circularArc(at, to, rx, large === 1, sweep === 1))
        break
      }
      case 'Z': {
        if (at.x !== start.x || at.y !== start.y) add(start, straight(at, start))
        chains.at(-1)!.closed = true
        break
      }
      default:
        throw new Error(`unknown command ${command} in a path`)
    }
  }
  return chains
}

/** From ends to centre: SVG 2, appendix B.2.4, for equal radii. */
function circularArc(from: Point, to: Point, given: number, large: boolean, positive: boolean): ReadCurve {
  const half = { x: (to.x - from.x) / 2, y: (to.y - from.y) / 2 }
  const chord = Math.hypot(half.x, half.y)
  const radius = Math.max(given, chord)
  const height = Math.sqrt(Math.max(0, radius * radius - chord * chord))
  const side = large === positive ? 1 : -1
  const centre = {
    x: from.x + half.x + (side * height * half.y) / chord,
    y: from.y + half.y - (side * height * half.x) / chord,
  }
  const start = Math.atan2(from.y - centre.y, from.x - centre.x)
  let angle = Math.atan2(to.y - centre.y, to.x - centre.x) - start
  if (positive && angle < 0) angle += 2 * Math.PI
  if (!positive && angle > 0) angle -= 2 * Math.PI
  return {
    kind: 'curve',
    at: t => ({
      x: centre.x + radius * Math.cos(start + t * angle),
      y: centre.y + radius * Math.sin(start + t * angle),
    }),
  }
}
