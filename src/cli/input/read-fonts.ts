import { readFile } from 'node:fs/promises'
import { createRequire } from 'node:module'
import type { FontBytes } from '../../app/index.ts'
import { unpackWoff } from './unpack-woff.ts'

/** The scripts of the font that comes with the program: the first sets almost every letter, the others are rarely opened. */
const [first, ...rest] = ['latin', 'latin-ext', 'greek', 'cyrillic'] as const

/** Its weights, as the font's files call them. */
const weights = { regular: 400, bold: 600 } as const

/** Reads the font files, 120 kB together. */
export async function readFonts(): Promise<FontBytes> {
  const { resolve } = createRequire(import.meta.url)
  const read = (script: string, weight: number): Promise<Buffer> =>
    readFile(resolve(`@fontsource/ibm-plex-sans/files/ibm-plex-sans-${script}-${weight}-normal.woff`))
  const files = async (weight: number): Promise<readonly Uint8Array[]> => {
    const [main, ...others] = await Promise.all([first, ...rest].map(script => read(script, weight)))
    return [unpackWoff(main!), ...others]
  }
  const [regular, bold] = await Promise.all([files(weights.regular), files(weights.bold)])
  return { regular, bold }
}
