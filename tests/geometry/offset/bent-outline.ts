import type { Region } from '../../../src/geometry/shape/contour.ts'
import { randomFrom } from '../generate/random.ts'
import { roundaboutOutline } from '../generate/random-outline.ts'
import { crossesItself } from './crosses-itself.ts'

/** An outline of lines and arcs that does not cross itself, and a distance to offset it by. */
export function bentOutline(seed: number): { region: Region; delta: number } | undefined {
  const random = randomFrom(seed)
  const region: Region = { outer: roundaboutOutline(random, 3 + (seed % 9), 0.6), holes: [] }
  const delta = (seed % 2 === 0 ? 1 : -1) * (0.1 + 2 * random())
  return crossesItself([region.outer]) ? undefined : { region, delta }
}

/** Seeds whose offset the solid modeller gets wrong; the polygon library agrees with ours on them. */
export const modellerErrs = [233]
