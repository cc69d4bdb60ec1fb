import { planSchema } from '../plan/plan-schema.ts'

/** The JSON Schema of the plan file, for an editor to complete plans by. */
export function planSchemaText(): string {
  return `${JSON.stringify(planSchema(), undefined, 2)}\n`
}
