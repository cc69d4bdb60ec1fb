import { lineStyles } from '../../src/drawing/line-role.ts'
import type { Mark } from '../../src/drawing/mark.ts'
import type { Page } from '../../src/drawing/page.ts'
import { arcBeziers } from '../../src/geometry/approximate/beziers.ts'
import type { Contour } from '../../src/geometry/shape/contour.ts'
import { apply, compose, type Matrix } from '../../src/geometry/shape/matrix.ts'
import type { Point } from '../../src/geometry/shape/point.ts'
import { pointsPerMm } from '../../src/render/pdf/page-content.ts'
import type { Fonts } from '../../src/text/fonts.ts'
import { layOut } from '../../src/text/lay-out.ts'
import { textMatrix } from '../../src/text/place.ts'

type Curve = readonly ['m' | 'l' | 'c' | 'h', ...number[]]

/** A page as `floor.mjs` draws it: in points, counted from the upper left, y down, every number worked out. */
export type BarePage = {
  readonly width: number
  readonly height: number
  readonly paths: readonly {
    readonly lineWidth: number
    readonly dashes: readonly number[]
    readonly curves: readonly Curve[]
    readonly fill: boolean
  }[]
  readonly texts: readonly {
    readonly weight: string
    readonly size: number
    readonly at: readonly [number, number]
    readonly angle: number
    readonly text: string
  }[]
}

/** What a page holds, as nothing but points, widths and words. */
export function barePage(page: Page, fonts: Fonts): BarePage {
  const { width, height } = page.paper
  const toPoints: Matrix = { a: pointsPerMm, b: 0, c: 0, d: -pointsPerMm, e: 0, f: height * pointsPerMm }
  const layers = [
    ...page.placed.map(({ drawing, matrix }) => ({
      marks: drawing.marks,
      matrix: compose(matrix, toPoints),
    })),
    { marks: page.furniture, matrix: toPoints },
  ]
  const marks = layers.flatMap(({ marks, matrix }) => marks.map(mark => ({ mark, matrix })))
  return {
    width: width * pointsPerMm,
    height: height * pointsPerMm,
    paths: marks.flatMap(({ mark, matrix }) => barePaths(mark, matrix)),
    texts: marks.flatMap(({ mark, matrix }) => bareText(mark, matrix, fonts)),
  }
}

function barePaths(mark: Mark, matrix: Matrix): BarePage['paths'] {
  const curves = (contours: readonly Contour[]) => contours.flatMap(contour => curvesOf(contour, matrix))
  switch (mark.kind) {
    case 'text':
      return []
    case 'fill':
      return mark.regions.map(({ outer, holes }) => ({
        lineWidth: 0,
        dashes: [],
        curves: curves([outer, ...holes]),
        fill: true,
      }))
    case 'path': {
      const { width, dashes } = lineStyles[mark.role]
      return [
        {
          lineWidth: width * pointsPerMm,
          dashes: dashes.map(dash => dash * pointsPerMm),
          curves: curves(mark.contours),
          fill: false,
        },
      ]
    }
  }
}

function curvesOf({ segments, closed }: Contour, matrix: Matrix): readonly Curve[] {
  const [first] = segments
  if (first === undefined) return []
  const at = (p: Point): [number, number] => {
    const { x, y } = apply(matrix, p)
    return [x, y]
  }
  const drawn = segments.flatMap((segment): readonly Curve[] =>
    segment.kind === 'line'
      ? [['l', ...at(segment.to)]]
      : arcBeziers(segment).map((c): Curve => ['c', ...at(c.control1), ...at(c.control2), ...at(c.to)]),
  )
  return [['m', ...at(first.from)], ...drawn, ...(closed ? [['h'] as const] : [])]
}

function bareText(mark: Mark, matrix: Matrix, fonts: Fonts): BarePage['texts'] {
  if (mark.kind !== 'text') return []
  const laid = layOut(fonts[mark.weight], mark.words, mark.height)
  const { x, y } = apply(compose(textMatrix(laid, mark), matrix), { x: 0, y: 0 })
  const text = laid.glyphs.map(({ glyph }) => glyph.reads).join('')
  if (text === '') return []
  const angle = (-mark.angle * 180) / Math.PI
  return [{ weight: mark.weight, size: laid.size * pointsPerMm, at: [x, y], angle, text }]
}
