import type { Choices } from '../../src/app/inputs.ts'
import { layOutPacket } from '../../src/app/lay-out-packet.ts'
import { openFonts } from '../../src/app/open-fonts.ts'
import { printPdf } from '../../src/app/print-pdf.ts'
import { printSvg } from '../../src/app/print-svg.ts'
import { readModel } from '../../src/app/read-model.ts'
import type { Drawing } from '../../src/drawing/drawing.ts'
import type { Page } from '../../src/drawing/page.ts'
import type { Model, Part, Piece } from '../../src/model/part.ts'
import type { Printer } from '../../src/paper/printer/printer.ts'
import { defaultWorkshop } from '../../src/workshop/defaults.ts'
import { surroundings } from '../app/surroundings.ts'
import { type ReadBack, unmoved } from '../readback/read-back.ts'
import { readPdf } from '../readback/read-pdf.ts'
import { readSvg } from '../readback/read-svg.ts'
import { compareTemplate, perfect, type Trueness, worse } from './compare.ts'
import { compareMarkOut } from './compare-mark-out.ts'
import { compareTiles } from './compare-tiles.ts'
import { exactTemplate, placementAlone } from './exact-template.ts'
import { areaOf, beforeCorrection, inverse, seenThrough, sixOf, within } from './on-page.ts'
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

/** A printer as it may be, with a lean: it makes lengths across 0.6 % short and those along 0.4 % long. */
export const somePrinter: Printer = { name: 'attic', across: 0.994, along: 1.004, lean: 0.002 }

/**
 * Prints a plan as PDF and SVG, reads the files back and measures every page against the model, before what corrects it
 * for a printer.
 */
export async function measurePlan(
  plan: string,
  text: string,
  paper: string,
  printer?: Printer,
): Promise<readonly Measured[]> {
  const input = { text, file: plan }
  const { model, findings, style } = readModel(input)
  if (model === undefined) throw new Error(`${plan} cannot be printed`)
  // every part as a template, whatever else would suit it: that is the paper that shows its whole outline
  const choices: Choices = {
    paper,
    sheets: ['cover', 'template'],
    ...(printer === undefined ? {} : { printer }),
  }
  // the cover tells what was found, so what was found decides how many pages it has
  const before = { findings, style, workshop: defaultWorkshop }
  const pages = [
    ...layOutPacket(model, choices, openFonts(surroundings.fonts), undefined, before).packet.pages,
  ]
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
  const svgPages = pages.map(({ number }) => svg(`page-${String(number).padStart(digits, '0')}.svg`))
  const measured = (format: Measured['format'], trueness: Trueness): Measured => ({
    plan,
    paper,
    format,
    pages: pages.length,
    trueness,
  })
  const machines = handsOf(model).map(({ part, hand }) => {
    const file = svg(`${part.id}-template${hand === 'mirrored' ? '-mirrored' : ''}.svg`)
    return compareTemplate({ ...exactTemplate(part, hand, placementAlone(part, hand)), mouths: [] }, file)
  })
  return [
    measured('PDF', measurePages(model, pages, pdfPages)),
    measured('SVG', measurePages(model, pages, svgPages)),
    measured('SVG for machines', machines.reduce(worse, perfect)),
  ]
}

/**
 * All pages of a packet against the model: what lies whole on a page by itself, and what lies on several once it is
 * joined.
 *
 * @throws Error when a piece of the model is on no page
 */
export function measurePages(model: Model, pages: readonly Page[], reads: readonly ReadBack[]): Trueness {
  const tiles = new Map<string, ReadBack[]>()
  const seen = new Set<string>()
  const found = pages.map((page, i): Trueness => {
    const read = beforeCorrection(page, reads[i]!)
    const { paper, placed } = page
    const size = Math.max(
      Math.abs(read.width - paper.width),
      Math.abs(read.height - paper.height),
      barDeviation(read, placed.map(areaOf)),
    )
    const whole = placed.flatMap(one => {
      const shown = shownIn(model, one.drawing.id)
      const drawn = within(areaOf(one), read)
      const marked = markedOut(model, one.drawing)
      if (marked !== undefined) {
        for (const { id } of marked.pieces) seen.add(id)
        return [compareMarkOut(marked, sixOf(one), reductionOf(one.drawing), drawn)]
      }
      if (shown === undefined) return []
      seen.add(shown.piece.id)
      if (!shown.tile)
        return [compareTemplate(exactTemplate(shown.part, shown.piece.hand, sixOf(one)), drawn)]
      const back = seenThrough(inverse(sixOf(one)), drawn)
      tiles.set(shown.piece.id, [...(tiles.get(shown.piece.id) ?? []), back])
      return []
    })
    return [...whole, { ...perfect, bars: size }].reduce(worse, perfect)
  })
  const joined = allPieces(model).flatMap(({ part, piece }) => {
    if (!seen.has(piece.id)) throw new Error(`${piece.id} is on no page`)
    const reads = tiles.get(piece.id)
    return reads === undefined ? [] : [compareTiles(exactTemplate(part, piece.hand, unmoved), reads)]
  })
  return [...found, ...joined].reduce(worse, perfect)
}

type PieceOf = { readonly part: Part; readonly piece: Piece }

function allPieces({ parts }: Model): readonly PieceOf[] {
  return parts.flatMap(part => part.pieces.map(piece => ({ part, piece })))
}

function handsOf({ parts }: Model): readonly { readonly part: Part; readonly hand: Piece['hand'] }[] {
  return parts.flatMap(part =>
    [...new Set(part.pieces.map(({ hand }) => hand))].map(hand => ({ part, hand })),
  )
}

/** The part that a drawing is the mark-out of, which serves all its pieces; nothing for the words beside one. */
function markedOut({ parts }: Model, { id }: Drawing): Part | undefined {
  return parts.find(part => id === `${part.id}-mark-out`)
}

/** How much smaller than the wood a mark-out says it is. */
function reductionOf({ caption }: Drawing): number {
  const [, times] = /1:(\d+)$/.exec(caption.sheet) ?? []
  return times === undefined ? 1 : 1 / Number(times)
}

/** Which piece a drawing is the template of, or a tile of that; nothing for a key or a cover. */
function shownIn(model: Model, id: string): (PieceOf & { readonly tile: boolean }) | undefined {
  const tile = /-tile-\d+$/.test(id)
  const whole = id.replace(/-tile-\d+$/, '')
  const found = allPieces(model).find(({ part, piece }) => {
    const which = part.pieces.length > 1 ? `-${piece.number}` : ''
    return whole === `${part.id}-template${which}`
  })
  return found && { ...found, tile }
}
