import type { LengthStyle } from '../../length/precision.ts'
import { writeDecimal } from '../../number/write-decimal.ts'
import type { Finding, Place, Severity } from '../finding.ts'
import { locate } from '../locate.ts'
import type { Quantity } from '../quantity.ts'
import { sentence } from '../sentence.ts'
import { escapeUnseen } from '../visible.ts'
import type { Texts } from './texts.ts'

/** What `check --json` prints. Lines and columns count from 1; lengths are in mm and angles in degrees. */
export type JsonReport = {
  readonly paperjig: 1
  /** The plan's title; null where the plan could not be read. */
  readonly plan: string | null
  readonly findings: readonly JsonFinding[]
}

export type JsonFinding = {
  readonly rule: string
  readonly severity: Severity
  readonly message: string
  readonly places: readonly JsonPlace[]
  readonly measured?: Quantity
  readonly limit?: Quantity
  readonly facts: Readonly<Record<string, string | Quantity>>
}

export type JsonPlace = Omit<Place, 'source'> & {
  readonly file?: string
  readonly line?: number
  readonly column?: number
}

/** The report as data. `style` is how the sentences show lengths. */
export function jsonReport(
  title: string | undefined,
  findings: readonly Finding[],
  texts: Texts,
  style: LengthStyle,
): JsonReport {
  return {
    paperjig: 1,
    plan: title ?? null,
    findings: findings.map(finding => jsonFinding(finding, texts, style)),
  }
}

/** The report as text, which prints safely anywhere: what cannot be seen is written as `\u202e`. */
export function jsonText(report: JsonReport): string {
  return `${escapeUnseen(JSON.stringify(report, undefined, 2))}\n`
}

function jsonFinding(finding: Finding, texts: Texts, style: LengthStyle): JsonFinding {
  const { rule, severity, places, measured, limit } = finding
  const facts = Object.entries<string | Quantity>(finding.facts).map(
    ([name, fact]) => [name, typeof fact === 'string' ? fact : rounded(fact)] as const,
  )
  return {
    rule,
    severity,
    message: sentence(finding, style),
    places: places.map(place => jsonPlace(place, texts)),
    ...(measured ? { measured: rounded(measured) } : {}),
    ...(limit ? { limit: rounded(limit) } : {}),
    facts: Object.fromEntries(facts),
  }
}

function jsonPlace({ source, at, ...words }: Place, texts: Texts): JsonPlace {
  const rest =
    at === undefined ? words : { ...words, at: { face: at.face, x: toNanometre(at.x), y: toNanometre(at.y) } }
  if (!source) return rest
  const text = texts.get(source.file)
  return { file: source.file, ...(text === undefined ? {} : locate(text, source.from)), ...rest }
}

/** A nanometre; what lies behind it is the noise of the calculation. */
const decimals = 6

function rounded({ value, unit }: Quantity): Quantity {
  return { value: toNanometre(value), unit }
}

function toNanometre(value: number): number {
  return Number(writeDecimal(value, decimals))
}
