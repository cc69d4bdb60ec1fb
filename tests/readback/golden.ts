import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { difference, type Picture, readPng, sideBySide, writePng } from './raster.ts'

const goldens = new URL('../../golden/', import.meta.url)
const differences = new URL('../../out/golden-diff/', import.meta.url)

/**
 * Compares a picture with `golden/NAME.png`. A difference is written to `out/golden-diff/NAME.png`: what was
 * expected, where it differs, what came. With `REWRITE_GOLDENS=1` in the environment the golden is written anew,
 * and the test fails all the same, so that nobody rewrites by accident.
 *
 * @throws Error when the picture is not the golden one
 */
export function compareWithGolden(name: string, picture: Picture): void {
  const golden = new URL(`${name}.png`, goldens)
  if (process.env.REWRITE_GOLDENS === '1') {
    mkdirSync(goldens, { recursive: true })
    writeFileSync(golden, writePng(picture))
    throw new Error(`golden/${name}.png is rewritten: look at it, then run without REWRITE_GOLDENS`)
  }
  if (!existsSync(golden)) throw new Error(`there is no golden/${name}.png; REWRITE_GOLDENS=1 writes it`)
  const expected = readPng(readFileSync(golden))
  const sameSize = expected.width === picture.width && expected.height === picture.height
  const found = sameSize ? difference(expected, picture) : undefined
  if (found?.pixels === 0) return
  mkdirSync(differences, { recursive: true })
  const between = found === undefined ? [] : [found.picture]
  writeFileSync(new URL(`${name}.png`, differences), writePng(sideBySide([expected, ...between, picture])))
  throw new Error(
    `the page differs from golden/${name}.png in ${found?.pixels ?? 'its size'}: see out/golden-diff/${name}.png`,
  )
}
