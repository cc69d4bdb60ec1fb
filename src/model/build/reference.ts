import { type FaceName, isSide } from '../../finding/face-name.ts'
import { sides } from '../../finding/side.ts'
import { nearestName } from '../../length/nearest-name.ts'
import type { PartPlan, Plan, ReferencePlan } from '../../plan/plan.ts'
import type { Target } from '../joint.ts'
import type { Part, Undrawn } from '../part.ts'
import type { Context } from './context.ts'

/** What a reference leads to; nothing where it leads nowhere, which is reported. */
export function resolveReference(
  plan: Plan,
  parts: ReadonlyMap<string, Part | Undrawn>,
  reference: ReferencePlan,
  context: Context,
): Target | undefined {
  const { source } = reference
  const part = plan.parts.find(({ id }) => id.value === reference.part)
  if (part === undefined) {
    const known = plan.parts.map(({ id }) => id.value)
    const facts = { found: reference.part, allowed: known.join(', '), ...nearest(reference.part, known) }
    context.report({ rule: 'unknown-part', severity: 'error', places: [{ source }], facts })
    return undefined
  }
  context.noteUse('part', reference.part, source)
  const piece = reference.piece
  if (piece !== undefined && piece > part.make.value) {
    context.report({
      rule: 'unknown-piece',
      severity: 'error',
      places: [{ source }],
      facts: {
        found: `${reference.part}/${piece}`,
        part: reference.part,
        pieces: { value: part.make.value, unit: 'count' },
      },
    })
    return undefined
  }
  const base = {
    part: reference.part,
    ...(piece === undefined ? {} : { piece: `${reference.part}/${piece}` }),
    source,
  }
  if (reference.name === undefined) return { ...base, features: [] }
  const built = parts.get(reference.part)
  const face = faceNamed(reference.name, built)
  if (face !== undefined && reference.member === undefined) return { ...base, features: [], face }
  const features = featuresNamed(part, built, reference, context)
  return features && { ...base, features }
}

function faceNamed(name: string, part: Part | Undrawn | undefined): FaceName | undefined {
  if (isSide(name)) return name
  if (part === undefined || !('drawn' in part)) return undefined
  const own = sides.find(side => part.sideNames[side] === name)
  return own ?? part.drawn.edges.find(edge => edge.id === `edge:${name}`)?.id
}

/** The ids of the features of the cut that is meant. */
function featuresNamed(
  plan: PartPlan,
  part: Part | Undrawn | undefined,
  { name = '', member, source }: ReferencePlan,
  context: Context,
): readonly string[] | undefined {
  const cuts = plan.cuts.map(({ id }) => id.value)
  if (!cuts.includes(name)) {
    const facts = {
      found: name,
      within: plan.id.value,
      allowed: cuts.join(', '),
      ...nearest(name, [...cuts, ...sides]),
    }
    context.report({ rule: 'unknown-cut', severity: 'error', places: [{ source }], facts })
    return undefined
  }
  if (part === undefined || !('drawn' in part)) return []
  const all = part.drawn.features.filter(({ cut }) => cut === name)
  const meant =
    typeof member === 'number'
      ? all.filter(({ row, shape }) => row?.number === member || shape.kind === 'unplaced')
      : all
  if (meant.length > 0 || typeof member !== 'number') return meant.map(({ id }) => id)
  context.report({
    rule: 'unknown-member',
    severity: 'error',
    places: [{ source }],
    facts: { found: `${name}.${member}`, row: name, count: { value: all.length, unit: 'count' } },
  })
  return undefined
}

function nearest(found: string, known: readonly string[]): { readonly nearest?: string } {
  const near = nearestName(found, known)
  return near === undefined ? {} : { nearest: near }
}
