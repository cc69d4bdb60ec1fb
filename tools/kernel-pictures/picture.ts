import { boundsOfRegions, joinBounds, noBounds } from '../../src/geometry/measure/bounds.ts'
import type { Bounds, Contour, Region } from '../../src/geometry/shape/contour.ts'
import type { Point } from '../../src/geometry/shape/point.ts'
import { type Segment, sweep } from '../../src/geometry/shape/segment.ts'
import { writeDecimal } from '../../src/number/write-decimal.ts'

/** How a line is drawn: told apart by width and dashes, so that a print in black and white says the same. */
export type Pen = 'fine' | 'thin' | 'thick' | 'dashed' | 'dotted' | 'signal'

const pens: Readonly<Record<Pen, string>> = {
  fine: 'stroke="#777" stroke-width="0.25"',
  thin: 'stroke="#000" stroke-width="0.35"',
  thick: 'stroke="#000" stroke-width="1"',
  dashed: 'stroke="#000" stroke-width="0.35" stroke-dasharray="2 1.2"',
  dotted: 'stroke="#000" stroke-width="0.5" stroke-dasharray="0 1.2" stroke-linecap="round"',
  signal: 'stroke="#c03000" stroke-width="0.8"',
}

/** A picture in the making: millimetres, y up; the writer turns it over. */
export type Picture = {
  readonly contour: (contour: Contour, pen: Pen) => void
  readonly segments: (segments: readonly Segment[], pen: Pen) => void
  /** The inside of regions, in light grey. */
  readonly wood: (regions: readonly Region[]) => void
  readonly dot: (at: Point, radius?: number, hollow?: boolean) => void
  readonly arrow: (at: Point, angle: number) => void
  readonly words: (at: Point, words: string, size?: number, anchor?: 'start' | 'middle' | 'end') => void
  /** The finished SVG: everything that was drawn, with a margin, `width` millimetres wide when looked at. */
  readonly finish: (title: string, width?: number) => string
}

const margin = 4

export function picture(): Picture {
  const parts: string[] = []
  let bounds: Bounds = noBounds
  const reach = (p: Point, by = 0) => {
    bounds = joinBounds(bounds, { left: p.x - by, bottom: p.y - by, right: p.x + by, top: p.y + by })
  }
  const put = (element: string) => {
    parts.push(element)
  }
  const segments = (all: readonly Segment[], pen: Pen) => {
    if (all.length === 0) return
    const region = { outer: { segments: all, closed: false }, holes: [] }
    bounds = joinBounds(bounds, boundsOfRegions([region]))
    put(`<path d="${pathOf({ segments: all, closed: false })}" fill="none" ${pens[pen]}/>`)
  }
  return {
    contour(contour, pen) {
      bounds = joinBounds(bounds, boundsOfRegions([{ outer: contour, holes: [] }]))
      put(`<path d="${pathOf(contour)}" fill="none" stroke-linejoin="round" ${pens[pen]}/>`)
    },
    segments(all, pen) {
      // each on its own: they need not follow one another
      for (const s of all) segments([s], pen)
    },
    wood(regions) {
      bounds = joinBounds(bounds, boundsOfRegions(regions))
      const d = regions.flatMap(r => [r.outer, ...r.holes].map(pathOf)).join('')
      put(`<path d="${d}" fill="#e6e6e6" fill-rule="evenodd"/>`)
    },
    dot(at, radius = 0.9, hollow = false) {
      reach(at, radius)
      const fill = hollow ? 'fill="#fff" stroke="#000" stroke-width="0.3"' : 'fill="#000"'
      put(`<circle cx="${n(at.x)}" cy="${n(-at.y)}" r="${n(radius)}" ${fill}/>`)
    },
    arrow(at, angle) {
      reach(at, 2)
      const tip = (turned: number, size: number) =>
        `${n(at.x + size * Math.cos(angle + turned))} ${n(-(at.y + size * Math.sin(angle + turned)))}`
      put(`<path d="M${tip(0, 1.3)}L${tip(2.5, 1.6)}L${tip(-2.5, 1.6)}Z" fill="#000"/>`)
    },
    words(at, words, size = 3.2, anchor = 'middle') {
      const width = words.length * size * 0.55
      const start = anchor === 'start' ? at.x : anchor === 'end' ? at.x - width : at.x - width / 2
      reach({ x: start, y: at.y })
      reach({ x: start + width, y: at.y + size })
      put(
        `<text x="${n(at.x)}" y="${n(-at.y)}" font-size="${n(size)}" text-anchor="${anchor}" font-family="sans-serif">${words}</text>`,
      )
    },
    finish(title, width) {
      const { left, bottom, right, top } = bounds
      const box = [
        left - margin,
        -top - margin,
        right - left + 2 * margin,
        top - bottom + 2 * margin,
      ] as const
      const shown = width ?? box[2]
      return [
        `<svg xmlns="http://www.w3.org/2000/svg" viewBox="${box.map(n).join(' ')}" width="${n(shown)}mm" height="${n((box[3] * shown) / box[2])}mm">`,
        `<title>${title}</title>`,
        `<rect x="${n(box[0])}" y="${n(box[1])}" width="${n(box[2])}" height="${n(box[3])}" fill="#fff"/>`,
        ...parts,
        '</svg>',
        '',
      ].join('\n')
    },
  }
}

function n(value: number): string {
  return writeDecimal(value, 3)
}

/** A contour as SVG path data, its arcs as true arcs. */
export function pathOf({ segments, closed }: Contour): string {
  const first = segments[0]
  if (first === undefined) return ''
  const steps = segments.map(s => {
    const end = `${n(s.to.x)} ${n(-s.to.y)}`
    if (s.kind === 'line') return `L${end}`
    const large = Math.abs(sweep(s)) > Math.PI ? 1 : 0
    // y is turned over, so counter-clockwise is SVG's negative angle
    return `A${n(s.radius)} ${n(s.radius)} 0 ${large} ${s.turn === 1 ? 0 : 1} ${end}`
  })
  return `M${n(first.from.x)} ${n(-first.from.y)}${steps.join('')}${closed ? 'Z' : ''}`
}
