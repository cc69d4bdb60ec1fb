import { loadFont } from '../text/font.ts'
import type { Fonts } from '../text/fonts.ts'
import type { FontBytes } from './inputs.ts'

export function openFonts({ regular, bold }: FontBytes): Fonts {
  return { regular: loadFont(regular), bold: loadFont(bold) }
}
