import type { Packet, Page } from '../../drawing/page.ts'
import { compose, identity, type Matrix } from '../../geometry/shape/matrix.ts'
import type { Fonts } from '../../text/fonts.ts'
import { writeFactor } from '../write-mm.ts'
import { xmlText } from '../xml-text.ts'
import { svgDocument } from './document.ts'
import { group, layerGroups } from './groups.ts'
import { markElements } from './mark-elements.ts'
import type { SvgOptions } from './options.ts'
import { uniqueIds } from './unique-ids.ts'

/**
 * A page as an SVG file of its size. Numbers in it are the page's millimetres with y counted down from the upper
 * edge; the only transform is the page's correction, where it has one. Text is outlines with its words as
 * titles. Arcs are arcs, whole circles are circles.
 *
 * @throws RangeError when a number on the page is not finite
 */
export function renderSvgPage(
  page: Page,
  packet: Pick<Packet, 'title' | 'language'>,
  fonts: Fonts,
  { lines = 'printed', text = true }: SvgOptions = {},
): string {
  const options = { lines, text }
  const { width, height } = page.paper
  const corner = { left: 0, top: height }
  const uniqueId = uniqueIds()
  const drawings = page.placed.flatMap(({ drawing, matrix }) => {
    const id = uniqueId(drawing.id)
    const { part, plan, sheet } = drawing.caption
    const groups = layerGroups(id, drawing.marks, uniqueId, m =>
      markElements(m, matrix, corner, fonts, options),
    )
    return group(
      id,
      groups.length === 0 ? [] : [`<title>${xmlText(`${part ?? plan}: ${sheet}`)}</title>`, ...groups],
    )
  })
  const furniture = layerGroups('page', page.furniture, uniqueId, m =>
    markElements(m, identity, corner, fonts, options),
  )
  const all = [...drawings, ...furniture]
  const content = isIdentity(page.correction)
    ? all
    : group(uniqueId('correction'), all, ` transform="${correction(page.correction, height)}"`)
  const title = `${packet.title}, page ${page.number}`
  return svgDocument({ width, height, title, language: packet.language }, content)
}

function isIdentity(m: Matrix): boolean {
  return m.a === 1 && m.b === 0 && m.c === 0 && m.d === 1 && m.e === 0 && m.f === 0
}

/** The correction as it acts on numbers counted down from the upper edge: turned over before and after. */
function correction(matrix: Matrix, height: number): string {
  const over: Matrix = { a: 1, b: 0, c: 0, d: -1, e: 0, f: height }
  const m = compose(compose(over, matrix), over)
  return `matrix(${[m.a, m.b, m.c, m.d, m.e, m.f].map(writeFactor).join(' ')})`
}
