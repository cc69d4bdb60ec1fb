import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import type { FontBytes } from '../../src/app/inputs.ts'
import { openFonts } from '../../src/app/open-fonts.ts'
import type { Fonts } from '../../src/text/fonts.ts'

const find = createRequire(import.meta.url).resolve

const filesOf = (weight: number): readonly Uint8Array[] =>
  ['latin', 'latin-ext', 'greek', 'cyrillic'].map(script =>
    readFileSync(find(`@fontsource/ibm-plex-sans/files/ibm-plex-sans-${script}-${weight}-normal.woff`)),
  )

/** The bytes of the fonts that come with the program, as the command line hands them over. */
export function fontBytes(): FontBytes {
  return { regular: filesOf(400), bold: filesOf(600) }
}

export function bundledFonts(): Fonts {
  return openFonts(fontBytes())
}
