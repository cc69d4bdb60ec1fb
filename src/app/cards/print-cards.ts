import type { Drawing } from '../../drawing/drawing.ts'
import type { Paper } from '../../drawing/page.ts'
import type { Unit } from '../../length/unit.ts'
import { frameOf } from '../../paper/frame.ts'
import { layOutPages } from '../../paper/lay-out-pages.ts'
import { upright } from '../../paper/papers.ts'
import { renderPdf } from '../../render/pdf/render-pdf.ts'
import { blankCardPages, type CardLayout, cardPages } from '../../sheet/cards/card-pages.ts'
import type { Fonts } from '../../text/fonts.ts'
import { defaultWorkshop } from '../../workshop/defaults.ts'
import { choosePaper } from '../choose-paper.ts'
import type { PlanText, Surroundings } from '../inputs.ts'
import { openFonts } from '../open-fonts.ts'
import type { PrintedPdf } from '../print-pdf.ts'
import { usualStyle } from '../read-model.ts'
import { readCards } from './read-cards.ts'

/** What is wanted of the cards. */
export type CardChoices = {
  readonly paper?: string
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
): Promise<PrintedPdf> {
  const read = plan === undefined ? undefined : readCards(plan, choices.parts)
  const units = read?.style.unit ?? unitsOf(choices.paper)
  const found = { texts: read?.texts ?? new Map(), style: read?.style ?? usualStyle[units] }
  const chosen = choosePaper(choices.paper, units)
  const findings = [...(read?.findings ?? []), ...('finding' in chosen ? [chosen.finding] : [])]
  if ('finding' in chosen || (read !== undefined && read.cards === undefined))
    return { pages: 0, findings, ...found }
  const fonts = openFonts(around.fonts)
  const { paper } = chosen
  const title = read?.title ?? 'From the paper drawing'
  const layout = layoutFor(paper, choices.perPage, title)
  const drawings = read?.cards
    ? cardPages(read.cards, layout, fonts)
    : blankCardPages(choices.count, layout, fonts)
  const pdf = await renderPages(drawings, { title, paper, units }, fonts, around)
  return { pdf, pages: drawings.length, findings, ...found }
}

/** Blank cards speak of no plan whose units would say what paper is usual, but the paper says what units are. */
function unitsOf(paper: string | undefined): Unit {
  return paper !== undefined && /^a\d|mm/i.test(paper.trim()) ? 'mm' : 'inch'
}

function layoutFor(paper: Paper, perPage: 1 | 2, title: string): CardLayout {
  const { body } = frameOf(upright(paper), defaultWorkshop)
  return {
    room: { width: body.right - body.left, height: body.top - body.bottom },
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
  { title, paper, units }: { readonly title: string; readonly paper: Paper; readonly units: Unit },
  fonts: Fonts,
  { date, version }: Surroundings,
): Promise<Uint8Array> {
  const sheets = drawings.map(drawing => ({
    id: drawing.id,
    group: drawing.id,
    drawings: [drawing] as const,
  }))
  const { pages } = layOutPages(sheets, { paper, units, workshop: defaultWorkshop }, fonts)
  const packet = { title, language: 'en', pages: pages(), ...(date === undefined ? {} : { date }) }
  return renderPdf(packet, fonts, version)
}
