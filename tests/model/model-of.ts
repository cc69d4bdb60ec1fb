import { buildModel } from '../../src/model/build/model.ts'
import type { Feature } from '../../src/model/feature.ts'
import { faceOf, type Model, type Part, type Solid } from '../../src/model/part.ts'
import { type Point3, toPart } from '../../src/model/pose.ts'
import { readPlan } from '../../src/plan/read-plan.ts'

/** The model of a plan text that has no fault. */
export function modelOf(text: string): Model {
  const { model, findings } = built(text)
  if (model === undefined) throw new Error(`no model: ${JSON.stringify(findings, null, 1)}`)
  return model
}

/** What comes of a plan text that reads well. */
export function built(text: string): ReturnType<typeof buildModel> {
  const { plan, findings } = readPlan(text, 'pier.yaml')
  if (plan === undefined) throw new Error(`no plan: ${JSON.stringify(findings, null, 1)}`)
  return buildModel(plan)
}

/** A plan in millimetres with one part; `body` is what the part holds besides its size, indented by four. */
export function planOf(body: string, size = '100 x 40 x 20'): string {
  return `paperjig: 1\ntitle: Pier\nunits: mm\nparts:\n  plank:\n    size: ${size}\n${body}`
}

/** A part with cuts, each a line of YAML such as `hole: pin, at: center, diameter: 4`. */
export function planWithCuts(cuts: readonly string[], size?: string): string {
  return planOf(`    cuts:\n${cuts.map(cut => `      - { ${cut} }\n`).join('')}`, size)
}

export function partWithCuts(cuts: readonly string[], size?: string): Part {
  return onlyPart(modelOf(planWithCuts(cuts, size)))
}

export function onlyPart(model: Model): Part {
  const [part, ...others] = model.parts
  if (part === undefined || others.length > 0) throw new Error(`${model.parts.length} parts`)
  return part
}

/** Where in the part the centre of a bore lies. */
export function boreInPart(solid: Solid, { face, shape }: Feature): Point3 {
  if (shape.kind !== 'bore') throw new Error(`${shape.kind} is no bore`)
  return toPart(faceOf(solid, face).pose, shape.centre)
}

/** The centres of all bores of a solid, on their faces. */
export function centresOf(solid: Solid) {
  return solid.features.map(({ shape }) => (shape.kind === 'bore' ? shape.centre : undefined))
}

/** The place in a text that a source points at. */
export function written(text: string, source: { readonly from: number; readonly to: number }): string {
  return text.slice(source.from, source.to)
}
