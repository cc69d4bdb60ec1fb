import type { Paper } from '../drawing/page.ts'
import type { Finding } from '../finding/finding.ts'
import type { Unit } from '../length/unit.ts'
import { frameOf } from '../paper/frame.ts'
import { lying, upright } from '../paper/papers.ts'
import type { Workshop } from '../workshop/workshop.ts'
import { chooseLength } from './choose-length.ts'
import { choosePaper } from './choose-paper.ts'
import type { Choices } from './inputs.ts'

/** The paper, what the printer reaches of it, and what two tiles share, in millimetres. */
export type ChosenPage = {
  readonly paper: Paper
  readonly printer: Workshop['printer']
  readonly overlap?: number
}

/** Less to draw on is not worth a page. */
const smallestBody = 40
/** A seam needs room for its match marks; a wider overlap only wastes paper. */
const overlapFrom = 8
const overlapTo = 50
/** No printer leaves more. */
const widestMargin = 50

/** The paper and its edges as they are asked for, or why there are none such. Bare numbers are in the plan's units. */
export function choosePage(
  { paper, margin, overlap }: Pick<Choices, 'paper' | 'margin' | 'overlap'>,
  unit: Unit,
  { printer }: Pick<Workshop, 'printer'>,
): { readonly page: ChosenPage } | { readonly findings: readonly Finding[] } {
  const chosen = choosePaper(paper, unit)
  const edge =
    margin === undefined
      ? undefined
      : chooseLength(margin, { name: 'margin', least: 0, most: widestMargin, unit })
  const shared =
    overlap === undefined
      ? undefined
      : chooseLength(overlap, { name: 'overlap', least: overlapFrom, most: overlapTo, unit })
  const findings = [chosen, edge, shared].flatMap(choice =>
    choice !== undefined && 'finding' in choice ? [choice.finding] : [],
  )
  if (findings.length > 0 || 'finding' in chosen) return { findings }
  const all = edge !== undefined && 'mm' in edge ? edge.mm : undefined
  const reached =
    all === undefined ? printer : { ...printer, margin: { left: all, right: all, top: all, bottom: all } }
  if (!leavesRoom(chosen.paper, reached))
    return {
      findings: [
        {
          rule: 'no-room-on-paper',
          severity: 'error',
          places: [],
          facts: { paper: chosen.paper.name },
        },
      ],
    }
  return {
    page: {
      paper: chosen.paper,
      printer: reached,
      ...(shared !== undefined && 'mm' in shared ? { overlap: shared.mm } : {}),
    },
  }
}

function leavesRoom(paper: Paper, printer: Workshop['printer']): boolean {
  return [upright(paper), lying(paper)].every(way => {
    const { body } = frameOf(way, { printer }, 'tile')
    return body.right - body.left >= smallestBody && body.top - body.bottom >= smallestBody
  })
}
