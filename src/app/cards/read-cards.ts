import { type NamedValue, type Scope, within } from '../../length/scope.ts'
import { buildModel } from '../../model/build/model.ts'
import { takeNotes } from '../../model/build/notes.ts'
import { planScope } from '../../model/build/scope.ts'
import type { Part } from '../../model/part.ts'
import { readPlan } from '../../plan/read-plan.ts'
import type { Card } from '../../sheet/cards/card.ts'
import { chooseParts } from '../choose-parts.ts'
import type { Found } from '../found.ts'
import type { PlanText } from '../inputs.ts'
import { usualStyle } from '../read-model.ts'
import { partCard } from './part-card.ts'

/** The cards of a plan; without them the findings say why. What a check would find is what the cards ask, and not said. */
export type ReadCards = Found & { readonly title?: string; readonly cards?: readonly Card[] }

/** A card for each part wanted, in the order of the plan. */
export function readCards({ text: input, file }: PlanText, wanted: readonly string[] | undefined): ReadCards {
  const { plan, findings: reading, text } = readPlan(input, file)
  const texts = new Map([[file, text]])
  if (plan === undefined) return { findings: reading, texts, style: usualStyle.inch }
  const { model, findings: building } = buildModel(plan)
  const unread = { findings: [...reading, ...building], texts, style: usualStyle[plan.units] }
  if (model === undefined) return unread
  const chosen = chooseParts(model, wanted)
  if (chosen.findings.length > 0) return { ...unread, findings: [...unread.findings, ...chosen.findings] }

  const style = { unit: model.units, precision: model.precision }
  const { notes } = takeNotes(plan)
  const scope = planScope(plan, notes)
  const parts = new Map(model.parts.map(part => [part.id, part]))
  const cards = plan.parts
    .filter(({ id }) => wanted === undefined || wanted.includes(id.value))
    .map(part => {
      const own = ownSizes(parts.get(part.id.value))
      return partCard(
        part,
        plan.stock,
        { scope: within(own, scope), style, confirmed: false },
        notes.confirms,
      )
    })
  return { ...unread, title: plan.title.value, style, cards }
}

/** A part's own length, width and thickness, which formulas inside it may use; those of a part that cannot be drawn are not known. */
function ownSizes(part: Part | undefined): Scope {
  const names = ['length', 'width', 'thickness'] as const
  return new Map<string, NamedValue>(
    names.flatMap(name => (part === undefined ? [] : [[name, { kind: 'length', ...part[name] }] as const])),
  )
}
