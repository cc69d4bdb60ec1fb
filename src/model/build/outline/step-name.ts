import type { OutlineStep } from '../../../plan/plan.ts'

/** What the edge of a step is called in messages: its name, or its number in the order of the steps. */
export function edgeName(step: OutlineStep, index: number): string {
  return step.name?.value ?? `edge ${index + 1}`
}

/** What the corner at the end of a step is called in messages. */
export function cornerName(step: OutlineStep, index: number): string {
  return step.cornerName?.value ?? `corner ${index + 1} of the outline`
}
