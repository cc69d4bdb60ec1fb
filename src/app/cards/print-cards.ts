import type { Drawing } from '../../drawing/drawing.ts'
import type { Finding } from '../../finding/finding.ts'
import type { Unit } from '../../length/unit.ts'
import { frameOf } from '../../paper/frame.ts'
import { layOutPages } from '../../paper/lay-out-pages.ts'
import { upright } from '../../paper/papers.ts'
import { renderPdf } from '../../render/pdf/render-pdf.ts'
import { blankCardPages, type CardLayout, cardPages } from '../../sheet/cards/card-pages.ts'
import type { Fonts } from '../../text/fonts.ts'
import { defaultWorkshop } from '../../workshop/defaults.ts'
import { type ChosenPage, choosePage } from '../choose-page.ts'
import type { PlanText, Surroundings } from '../inputs.ts'
import { openFonts } from '../open-fonts.ts'
import type { PrintedPdf } from '../print-pdf.ts'
import { usualStyle } from '../read-model.ts'
import { readCards } from './read-cards.ts'

/** What is wanted of the cards. */
export type CardChoices = {
  readonly paper?: string
  /** The edge that the printer cannot reach. */
  readonly margin?: string
  /** Two cards a page are half as large and have room for fewer holes. */
  readonly perPage: 1 | 2
  /** The ids of the parts to make cards of, all of them unless given; blank cards are of no part. */
  readonly parts?: readonly string[]
  /** How many blank cards. */
  readonly count: number
}

/** Part cards to take to the paper drawing: a blank one, or one for each part of a plan with what is known filled in. */
export async function printCards(
  plan: PlanText | undefined,
  choices: CardChoices,
  around: Surroundings,
): Promise<Omit<PrintedPdf, 'areaBound'>> {
  const read = plan === undefined ? undefined : readCards(plan, choices.parts)
  const units = read?.style.unit ?? unitsOf(choices.paper)
  const found = { texts: read?.texts ?? new Map(), style: read?.style ?? usualStyle[units] }
  const chosen = chooseCardPage(choices, units)
  const findings = [...(read?.findings ?? []), ...('findings' in chosen ? chosen.findings : [])]
  if ('findings' in chosen || (read !== undefined && read.cards === undefined))
    return { pages: 0, findings, ...found }
  const fonts = openFonts(around.fonts)
  const { page } = chosen
  const title = read?.title ?? 'From the paper drawing'
  const layout = layoutFor(page, choices.perPage, title)
  const drawings = read?.cards
    ? cardPages(read.cards, layout, fonts)
    : blankCardPages(choices.count, layout, fonts)
  const pdf = await renderPages(drawings, { title, page, units }, fonts, around)
  return { pdf, pages: drawings.length, findings, ...found }
}

/** Blank cards speak of no plan whose units would say what paper is usual, but the paper says what units are. */
function unitsOf(paper: string | undefined): Unit {
  return paper !== undefined && /^a\d|mm/i.test(paper.trim()) ? 'mm' : 'inch'
}

/** The least width and height, in millimetres, on which a card can be written. */
const smallestCard = { width: 100, height: 90 }

function chooseCardPage(
  choices: CardChoices,
  units: Unit,
): { readonly page: ChosenPage } | { readonly findings: readonly Finding[] } {
  const chosen = choosePage(choices, units, defaultWorkshop)
  if ('findings' in chosen) return chosen
  const { width, height } = roomOn(chosen.page)
  if (width >= smallestCard.width && height >= smallestCard.height * choices.perPage) return chosen
  const { name } = chosen.page.paper
  return {
    findings: [{ rule: 'no-room-on-paper', severity: 'error', places: [], facts: { paper: name } }],
  }
}

function roomOn({ paper, printer }: ChosenPage): CardLayout['room'] {
  const { body } = frameOf(upright(paper), { printer })
  return { width: body.right - body.left, height: body.top - body.bottom }
}

function layoutFor(page: ChosenPage, perPage: 1 | 2, title: string): CardLayout {
  return {
    room: roomOn(page),
    perPage,
    caption: {
      part: title,
      pieces: 'part cards',
      plan: 'in the order of the plan file',
      sheet: 'sketch the sides, write sizes down, tick what is not given',
    },
  }
}

async function renderPages(
  drawings: readonly Drawing[],
  {
    title,
    page: { paper, printer },
    units,
  }: { readonly title: string; readonly page: ChosenPage; readonly units: Unit },
  fonts: Fonts,
  { date, version }: Surroundings,
): Promise<Uint8Array> {
  const sheets = drawings.map(drawing => ({
    id: drawing.id,
    group: drawing.id,
    drawings: [drawing] as const,
  }))
  const { pages } = layOutPages(sheets, { paper, units, workshop: { printer } }, fonts)
  const packet = { title, language: 'en', pages: pages(), ...(date === undefined ? {} : { date }) }
  return renderPdf(packet, fonts, version)
}
