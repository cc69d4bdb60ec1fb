import { readFile } from 'node:fs/promises'
import { createRequire } from 'node:module'
import type { FontBytes } from '../../app/index.ts'

/** The font that comes with the program, in the order in which its files are asked for a letter. */
const scripts = ['latin', 'latin-ext', 'greek', 'cyrillic'] as const

/** Its weights, as the font's files call them. */
const weights = { regular: 400, bold: 600 } as const

/** Reads the font files; all eight are 120 kB together, and most are not parsed unless a letter asks for them. */
export async function readFonts(): Promise<FontBytes> {
  const { resolve } = createRequire(import.meta.url)
  const files = (weight: number): Promise<Uint8Array[]> =>
    Promise.all(
      scripts.map(script =>
        readFile(resolve(`@fontsource/ibm-plex-sans/files/ibm-plex-sans-${script}-${weight}-normal.woff`)),
      ),
    )
  const [regular, bold] = await Promise.all([files(weights.regular), files(weights.bold)])
  return { regular, bold }
}
