import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import type { FontBytes } from '../../app/index.ts'
import { unpackWoff } from './unpack-woff.ts'

/** The scripts of the font that comes with the program: the first sets almost every letter, the others are rarely opened. */
const [first, ...rest] = ['latin', 'latin-ext', 'greek', 'cyrillic'] as const

/** Its weights, as the font's files call them. */
const weights = { regular: 400, bold: 600 } as const

/** Reads the font files, 120 kB together; one after the other, which is quicker for so few than to wait for each. */
export function readFonts(): FontBytes {
  const { resolve } = createRequire(import.meta.url)
  const read = (script: string, weight: number): Buffer =>
    readFileSync(resolve(`@fontsource/ibm-plex-sans/files/ibm-plex-sans-${script}-${weight}-normal.woff`))
  const files = (weight: number): readonly Uint8Array[] => [
    unpackWoff(read(first, weight)),
    ...rest.map(script => read(script, weight)),
  ]
  return { regular: files(weights.regular), bold: files(weights.bold) }
}
