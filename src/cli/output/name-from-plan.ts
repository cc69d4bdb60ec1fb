import { basename } from 'node:path'

/** What a plan's output is called unless the call says: as the plan file is, without its ending. */
export function nameFromPlan(plan: string): string {
  return basename(plan).replace(/\.ya?ml$/i, '')
}
