import type { Paper } from '../drawing/page.ts'
import { millimetresPerInch } from '../length/unit.ts'

const inches = (name: string, width: number, height: number): Paper => ({
  name,
  width: width * millimetresPerInch,
  height: height * millimetresPerInch,
})

/** The papers that have a name, upright. Source: ISO 216 for the A sizes, ANSI/ASME Y14.1 for Letter (A) and Tabloid (B), from memory. */
export const papers = {
  letter: inches('Letter', 8.5, 11),
  legal: inches('Legal', 8.5, 14),
  tabloid: inches('Tabloid', 11, 17),
  a4: { name: 'A4', width: 210, height: 297 },
  a3: { name: 'A3', width: 297, height: 420 },
  a5: { name: 'A5', width: 148, height: 210 },
} as const satisfies Readonly<Record<string, Paper>>

export type PaperName = keyof typeof papers

export const paperNames = Object.keys(papers) as readonly PaperName[]

/** The same sheet with its long side across. */
export function lying(paper: Paper): Paper {
  return { ...paper, width: Math.max(paper.width, paper.height), height: Math.min(paper.width, paper.height) }
}

/** The same sheet with its long side along. */
export function upright(paper: Paper): Paper {
  return { ...paper, width: Math.min(paper.width, paper.height), height: Math.max(paper.width, paper.height) }
}
