import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { type Font, loadFont } from '../../src/text/font.ts'
import type { Fonts, Weight } from '../../src/text/fonts.ts'

const find = createRequire(import.meta.url).resolve

const weights: Readonly<Record<Weight, number>> = { regular: 400, bold: 600 }

/** The bytes of the font that comes with the program, as the command line hands them over. */
export function fontFiles(weight: Weight = 'regular'): readonly Uint8Array[] {
  return ['latin', 'latin-ext', 'greek', 'cyrillic'].map(script =>
    readFileSync(
      find(`@fontsource/ibm-plex-sans/files/ibm-plex-sans-${script}-${weights[weight]}-normal.woff`),
    ),
  )
}

export function bundledFont(): Font {
  return loadFont(fontFiles())
}

export function bundledFonts(): Fonts {
  return { regular: bundledFont(), bold: loadFont(fontFiles('bold')) }
}
