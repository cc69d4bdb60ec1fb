import type { Encounter } from '../subject/encounters.ts'

/** The holes of two rows that meet are one thing to say. */
export function pairKey({ first, second }: Encounter): string {
  return [first, second].map(({ feature }) => `${feature.cut} ${feature.face}`).join(' ')
}
