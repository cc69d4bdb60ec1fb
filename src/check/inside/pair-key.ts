import type { Placed } from '../../model/feature.ts'

type OfFeature = { readonly feature: Placed }

/** The holes of two rows that meet are one thing to say. */
export function pairKey({
  first,
  second,
}: {
  readonly first: OfFeature
  readonly second: OfFeature
}): string {
  return [first, second].map(({ feature }) => `${feature.cut} ${feature.face}`).join(' ')
}
