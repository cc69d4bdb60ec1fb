import type { Finding, Place } from '../../finding/finding.ts'

/** What is found in a part or a cut says so in each of its places. */
export function placedIn<F extends Finding>(finding: F, where: Place): F {
  return { ...finding, places: finding.places.map(place => ({ ...where, ...place })) }
}
