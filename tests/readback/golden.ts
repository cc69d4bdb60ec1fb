import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { beforeOverlayAfter } from './before-overlay-after.ts'
import { difference, type Picture, readPng, writePng } from './raster.ts'

/** Where the golden pictures are, where to show those that have changed, and whether they are written anew. */
export type Goldens = { readonly folder: URL; readonly changed: URL; readonly rewrite: boolean }

const usual: Goldens = {
  folder: new URL('../../golden/', import.meta.url),
  changed: new URL('../../out/golden-diff/', import.meta.url),
  rewrite: process.env.REWRITE_GOLDENS === '1',
}

/**
 * Compares a picture with `golden/NAME.png`. Where that has changed, `out/golden-diff/NAME.png` shows before, overlay
 * and after side by side. With `REWRITE_GOLDENS=1` in the environment the golden is written anew, and the test fails
 * all the same, so that nobody rewrites by accident.
 *
 * @throws Error when the picture is not the golden one
 */
export function compareWithGolden(
  name: string,
  picture: Picture,
  { folder, changed, rewrite }: Goldens = usual,
): void {
  const golden = new URL(`${name}.png`, folder)
  const shown = new URL(`${name}.png`, changed)
  const before = existsSync(golden) ? readPng(readFileSync(golden)) : undefined
  const change = before && changeBetween(before, picture)
  if (before !== undefined && change !== undefined) {
    mkdirSync(changed, { recursive: true })
    writeFileSync(shown, beforeOverlayAfter(before, picture))
  } else rmSync(shown, { force: true })
  const see = change === undefined ? '' : `, ${change}: see out/golden-diff/${name}.png`
  if (rewrite) {
    mkdirSync(folder, { recursive: true })
    writeFileSync(golden, writePng(picture))
    throw new Error(`golden/${name}.png is rewritten${see}; look at it, then run without REWRITE_GOLDENS`)
  }
  if (before === undefined) throw new Error(`there is no golden/${name}.png; REWRITE_GOLDENS=1 writes it`)
  if (change !== undefined) throw new Error(`the page differs from golden/${name}.png${see}`)
}

/** What is different, in words; nothing where the pictures are the same. */
function changeBetween(before: Picture, after: Picture): string | undefined {
  if (before.width !== after.width || before.height !== after.height) return 'in its size'
  const { pixels } = difference(before, after)
  return pixels === 0 ? undefined : `in ${pixels} pixels`
}
