import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { readModel } from '../../src/app/read-model.ts'
import type { Region } from '../../src/geometry/shape/contour.ts'
import { comb } from '../../tests/geometry/generate/comb.ts'
import { gear } from '../../tests/geometry/generate/gear.ts'
import { randomFrom } from '../../tests/geometry/generate/random.ts'
import { randomStar } from '../../tests/geometry/generate/star.ts'

/** Outlines that are worked on one by one, and one set of them for every size that is measured. */
export type Family = { readonly name: string; readonly sets: readonly (readonly Region[])[] }

/** Shapes of about 100 to 100,000 segments (1,000 when `quick`), always the same, and the demo's parts. */
export function families(quick: boolean): readonly Family[] {
  const sizes = quick ? [100, 1_000] : [100, 1_000, 10_000, 100_000]
  const grown = (name: string, make: (segments: number) => Region): Family => ({
    name,
    sets: sizes.map(size => [make(size)]),
  })
  return [
    grown('gear', size => gear(size / 4)),
    grown('comb', size => comb(size / 4)),
    grown('random star', size => randomStar(size, randomFrom(1))),
    { name: "the demo's parts", sets: [demoParts()] },
  ]
}

export function segmentsOf(regions: readonly Region[]): number {
  const contours = regions.flatMap(({ outer, holes }) => [outer, ...holes])
  return contours.reduce((sum, { segments }) => sum + segments.length, 0)
}

function demoParts(): readonly Region[] {
  const file = fileURLToPath(new URL('../../examples/cliff-railway/cliff-railway.yaml', import.meta.url))
  const { model } = readModel({ text: readFileSync(file), file })
  if (model === undefined) throw new Error('the demo has no model')
  return model.parts.map(part => part.drawn.outline)
}
