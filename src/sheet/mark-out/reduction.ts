import type { Crowding } from '../dimension/run.ts'

/** How much smaller than the wood a mark-out is drawn, and how many of its dimensions; true size has no name. */
export type Reduction = {
  readonly factor: number
  readonly name?: string
  readonly crowding: Crowding
}

/** True size, then the standard scales of reduction, ISO 5455 (from memory), the largest first. */
const scales: readonly Omit<Reduction, 'crowding'>[] = [
  { factor: 1 },
  ...[2, 5, 10, 20, 50, 100].map(times => ({ factor: 1 / times, name: `1:${times}` })),
]

/** Before a scale is given up, dimensions are that stand far aside: the table has them too. */
export const reductions: readonly Reduction[] = scales.flatMap(scale =>
  (['all that are read', 'those close by'] as const).map(crowding => ({ ...scale, crowding })),
)
