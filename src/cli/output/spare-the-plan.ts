import { stat } from 'node:fs/promises'
import { CallError } from '../call-error.ts'

/** @throws CallError where the output would take the place of the plan, under whichever name */
export async function spareThePlan(plan: string, output: string): Promise<void> {
  const [a, b] = await Promise.all([plan, output].map(path => stat(path).catch(() => undefined)))
  if (a !== undefined && b !== undefined && a.isFile() && a.dev === b.dev && a.ino === b.ino) {
    throw new CallError(`${output} is the plan itself; say another file with -o`)
  }
}
