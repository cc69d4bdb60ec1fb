/** How much smaller than the wood a mark-out is drawn; true size has no name. */
export type Reduction = { readonly factor: number; readonly name?: string }

export const trueSize: Reduction = { factor: 1 }

/** The standard scales of reduction, ISO 5455 (from memory), the largest first. */
export const reductions: readonly Reduction[] = [2, 5, 10, 20, 50, 100].map(times => ({
  factor: 1 / times,
  name: `1:${times}`,
}))
