import type { Choices } from '../../src/app/inputs.ts'
import { type LaidPacket, layOutPacket } from '../../src/app/lay-out-packet.ts'
import { openFonts } from '../../src/app/open-fonts.ts'
import { readModel } from '../../src/app/read-model.ts'
import { readFonts } from '../../src/cli/input/read-fonts.ts'
import type { Fonts } from '../../src/text/fonts.ts'
import { defaultWorkshop } from '../../src/workshop/defaults.ts'

/** The pages that `print` makes of a plan, and the fonts that it sets them in. */
export function packetOf(
  text: string,
  choices: Choices,
): { readonly laid: LaidPacket; readonly fonts: Fonts; readonly bytes: ReturnType<typeof readFonts> } {
  const bytes = readFonts()
  const fonts = openFonts(bytes)
  const { model, findings, style } = readModel({ text, file: 'plan.yaml' })
  if (model === undefined) throw new Error('the plan cannot be read')
  const before = { findings, style, workshop: defaultWorkshop }
  return { laid: layOutPacket(model, choices, fonts, undefined, before), fonts, bytes }
}
