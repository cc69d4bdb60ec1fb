import type { Finding, FindingOf } from '../finding/finding.ts'
import { nearestName } from '../length/nearest-name.ts'
import type { Feature } from '../model/feature.ts'
import type { Model, Part } from '../model/part.ts'
import type { AskedStrip } from '../sheet/sheet.ts'
import { chooseParts } from './choose-parts.ts'

/** The part and the cut that a drill strip is asked for, by `PART.ROW`; or why there is none such. */
export function chooseStrip(
  model: Model,
  wanted: string,
): { readonly part: Part; readonly strip: AskedStrip } | { readonly findings: readonly Finding[] } {
  const [, name = '', piece, cut = ''] =
    /^([^./]*)(?:\/(\d+))?\.([^.]+)(?:\.(?:\d+|all))?$/.exec(wanted) ?? []
  if (cut === '') return { findings: [unusable(model, wanted)] }
  const { parts, findings } = chooseParts(model, [name])
  const [part] = parts
  // a part that the drawing does not give enough of is in the plan, and has no holes yet
  if (part === undefined)
    return { findings: findings.length > 0 ? findings : [noStrip(wanted, 'the part cannot be drawn yet')] }
  const features = part.drawn.features.filter(feature => feature.cut === cut)
  const why = features.length === 0 ? undefined : whyNone(features)
  if (why !== undefined) return { findings: [noStrip(wanted, why)] }
  const made = piece === undefined ? undefined : part.pieces.find(({ number }) => number === Number(piece))
  if (piece !== undefined && made === undefined) {
    const pieces = { value: part.pieces.length, unit: 'count' as const }
    return {
      findings: [
        {
          rule: 'unknown-piece',
          severity: 'error',
          places: [],
          facts: { found: `${part.id}/${piece}`, part: part.id, pieces },
        },
      ],
    }
  }
  if (features.length > 0) return { part, strip: { cut, ...(made === undefined ? {} : { hand: made.hand }) } }
  const names = [...new Set(part.drawn.features.map(feature => feature.cut))]
  const nearest = nearestName(cut, names)
  return {
    findings: [
      {
        rule: 'unknown-cut',
        severity: 'error',
        places: [],
        facts: {
          found: cut,
          within: part.id,
          allowed: names.join(', '),
          ...(nearest === undefined ? {} : { nearest }),
        },
      },
    ],
  }
}

/** Why a cut that the part has is not bored against a fence. */
function whyNone(features: readonly Feature[]): string | undefined {
  if (features.every(({ shape }) => shape.kind === 'unplaced')) return 'the plan does not say where it is'
  if (!features.some(({ shape }) => shape.kind === 'bore')) return 'it is not bored'
  if (features.every(({ row }) => row?.pattern === 'circle'))
    return 'its holes stand on a circle, not in line'
  return undefined
}

/** Where holes that could be bored against a fence have no straight edge to lay against it. */
export function noEdgeForStrip(wanted: string): FindingOf<'no-strip'> {
  return noStrip(wanted, 'the part has no straight edge there to lay against a fence')
}

function noStrip(found: string, why: string): FindingOf<'no-strip'> {
  return { rule: 'no-strip', severity: 'error', places: [], facts: { found, why } }
}

function unusable({ parts }: Model, found: string): FindingOf<'unusable-reference'> {
  const rows = parts.flatMap(({ id, drawn }) =>
    drawn.features.flatMap(({ row, cut }) => (row === undefined ? [] : [`${id}.${cut}`])),
  )
  const nearest = nearestName(found, rows)
  const example = rows[0] ?? 'side-frame.posts'
  return {
    rule: 'unusable-reference',
    severity: 'error',
    places: [],
    facts: { found, example, ...(nearest === undefined ? {} : { nearest }) },
  }
}
