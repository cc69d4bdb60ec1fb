import type { Choices } from '../../src/app/inputs.ts'
import { type LaidPacket, layOutPacket } from '../../src/app/lay-out-packet.ts'
import { openFonts } from '../../src/app/open-fonts.ts'
import { printPdf } from '../../src/app/print-pdf.ts'
import { printSvg } from '../../src/app/print-svg.ts'
import { readModel } from '../../src/app/read-model.ts'
import type { Page } from '../../src/drawing/page.ts'
import type { Model, Part, Piece } from '../../src/model/part.ts'
import { surroundings } from '../app/surroundings.ts'
import type { ReadBack, Six } from '../readback/read-back.ts'
import { readPdf } from '../readback/read-pdf.ts'
import { readSvg } from '../readback/read-svg.ts'
import { compareTemplate, perfect, type Trueness, worse } from './compare.ts'
import { exactTemplate, placementAlone } from './exact-template.ts'
import { barDeviation } from './scale-bars.ts'

/** How true the files of one plan on one paper are. */
export type Measured = {
  readonly plan: string
  readonly paper: string
  readonly format: 'PDF' | 'SVG' | 'SVG for machines'
  readonly pages: number
  readonly trueness: Trueness
}

export const formats = ['PDF', 'SVG', 'SVG for machines'] as const

/**
 * Prints a plan as PDF and SVG, reads the files back and measures them against the model. What does not fit the
 * paper goes on one of its own, as large as it has to be.
 */
export async function measurePlan(name: string, text: string, paper: string): Promise<readonly Measured[]> {
  const { model } = readModel({ text, file: name })
  if (model === undefined) throw new Error(`${name} cannot be printed`)
  const laid = layOut(model, { paper })
  const found = laid.count === 0 ? [] : await measurePackets(name, text, model, { paper })
  const parts = laid.findings.flatMap(f => (f.rule === 'does-not-fit' ? (f.places[0]?.part ?? []) : []))
  if (parts.length === 0) return found
  const choices = { paper: paperFor(laid), parts: [...new Set(parts)] }
  return [...found, ...(await measurePackets(name, text, model, choices))]
}

function layOut(model: Model, choices: Choices): LaidPacket {
  return layOutPacket(model, choices, openFonts(surroundings.fonts), undefined)
}

/** More than what margins and furniture take on any page. */
const furnitureRoom = 80

function paperFor({ findings }: LaidPacket): string {
  const sides = findings.flatMap(f => (f.rule === 'does-not-fit' ? [f.facts] : []))
  const side = (key: 'width' | 'height'): number =>
    Math.ceil(Math.max(...sides.map(facts => facts[key].value)) + furnitureRoom)
  return `${side('width')}x${side('height')}mm`
}

async function measurePackets(
  plan: string,
  text: string,
  model: Model,
  choices: Choices & { readonly paper: string },
): Promise<readonly Measured[]> {
  const pages = [...layOut(model, choices).packet.pages]
  const input = { text, file: plan }
  const { pdf } = await printPdf(input, choices, surroundings)
  const { files } = printSvg(input, choices, surroundings)
  const svg = (name: string): ReadBack => {
    const file = files.find(f => f.name === name)
    if (file === undefined) throw new Error(`there is no ${name}`)
    return readSvg(new TextDecoder().decode(file.bytes))
  }
  const pdfPages = await readPdf(pdf!)
  if (pdfPages.length !== pages.length) throw new Error(`the PDF has ${pdfPages.length} pages`)
  const digits = String(pages.length).length
  const all = (format: Measured['format'], measure: (page: Page, i: number) => Trueness): Measured => ({
    plan,
    paper: choices.paper,
    format,
    pages: pages.length,
    trueness: pages.map(measure).reduce(worse, perfect),
  })
  return [
    all('PDF', (page, i) => measurePage(model, page, pdfPages[i]!)),
    all('SVG', page =>
      measurePage(model, page, svg(`page-${String(page.number).padStart(digits, '0')}.svg`)),
    ),
    all('SVG for machines', ({ placed }) => {
      const { id } = placed[0]!.drawing
      const { part, hand } = shownIn(model, id)
      return compareTemplate(exactTemplate(part, hand, placementAlone(part, hand)), svg(`${id}.svg`))
    }),
  ]
}

function measurePage(model: Model, { paper, placed }: Page, read: ReadBack): Trueness {
  const { drawing, matrix } = placed[0]!
  const { part, hand } = shownIn(model, drawing.id)
  const six: Six = [matrix.a, matrix.b, matrix.c, matrix.d, matrix.e, matrix.f]
  const size = Math.max(Math.abs(read.width - paper.width), Math.abs(read.height - paper.height))
  const { left, right, bottom, top } = drawing.bounds
  const area = {
    left: left + matrix.e,
    right: right + matrix.e,
    bottom: bottom + matrix.f,
    top: top + matrix.f,
  }
  const bars = Math.max(barDeviation(read, area), size)
  return worse(compareTemplate(exactTemplate(part, hand, six), read), { ...perfect, bars })
}

/** Which piece a template is of. */
function shownIn({ parts }: Model, id: string): { readonly part: Part; readonly hand: Piece['hand'] } {
  for (const part of parts) {
    if (id === `${part.id}-template`) return { part, hand: 'drawn' }
    if (id === `${part.id}-template-mirrored`) return { part, hand: 'mirrored' }
  }
  throw new Error(`${id} is the template of no part`)
}
