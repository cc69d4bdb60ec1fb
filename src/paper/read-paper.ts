import type { Paper } from '../drawing/page.ts'
import { evaluate } from '../length/evaluate.ts'
import { nearestName } from '../length/nearest-name.ts'
import { readDimensions } from '../length/read-dimensions.ts'
import { emptyScope } from '../length/scope.ts'
import type { Unit } from '../length/unit.ts'
import { type PaperName, paperNames, papers } from './papers.ts'

/** Smaller, and the scale bars have no room; larger, and no PDF holds it (14,400 points, ISO 32000-1 annex C). */
const smallestSide = 100
const largestSide = 5080

/** What a paper may be called, for a message. */
export const papersInWords = `${paperNames.join(', ')}, or a width and height such as 210x297mm`

/** Why a paper cannot be used, in words that follow its name. */
export type PaperFault = { readonly found: string; readonly wanted: string; readonly nearest?: string }

/**
 * A paper by its name, or by width x height with a unit mark on one of them at least, `8.5x11in`; bare numbers are in
 * `unit`.
 */
export function readPaper(
  text: string,
  unit: Unit,
): { readonly paper: Paper } | { readonly fault: PaperFault } {
  const name = text.trim().toLowerCase()
  if (isPaperName(name)) return { paper: papers[name] }
  const sides = /^([^x×]+)[x×]([^x×]+)$/i.exec(name)
  if (sides === null) {
    const nearest = nearestName(name, paperNames)
    return { fault: { found: text, wanted: papersInWords, ...(nearest === undefined ? {} : { nearest }) } }
  }
  return readSides(text, sides[1]!.trim(), sides[2]!.trim(), unit)
}

function isPaperName(name: string): name is PaperName {
  return Object.hasOwn(papers, name)
}

function readSides(text: string, first: string, second: string, unit: Unit) {
  // the unit is usually written once, behind the second side
  const mark = /[a-z"″]+$/.exec(second)?.[0] ?? ''
  const read = readDimensions(`${/[a-z"″]$/.test(first) ? first : first + mark} x ${second}`)
  const fault = (wanted: string) => ({ fault: { found: text, wanted } })
  if (!read.ok) return fault(papersInWords)
  const mm: number[] = []
  for (const { size } of read.value) {
    const length = evaluate(size, emptyScope, unit)
    if (!length.ok || length.value.kind !== 'length') return fault(papersInWords)
    mm.push(length.value.mm)
  }
  const [width, height] = mm as [number, number]
  if (mm.length !== 2) return fault(papersInWords)
  if (Math.min(width, height) < smallestSide || Math.max(width, height) > largestSide) {
    return fault(`sides from ${smallestSide} mm to ${largestSide} mm`)
  }
  return { paper: { name: text.trim(), width, height } }
}
