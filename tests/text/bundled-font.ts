import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { type Font, loadFont } from '../../src/text/font.ts'

const find = createRequire(import.meta.url).resolve

/** The bytes of the font that comes with the program, as the command line hands them over. */
export function fontFiles(): readonly Uint8Array[] {
  return ['latin', 'latin-ext', 'greek', 'cyrillic'].map(script =>
    readFileSync(find(`@fontsource/ibm-plex-sans/files/ibm-plex-sans-${script}-400-normal.woff`)),
  )
}

export function bundledFont(): Font {
  return loadFont(fontFiles())
}
