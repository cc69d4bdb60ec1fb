import type { Mark } from '../drawing/mark.ts'
import type { Finding } from '../finding/finding.ts'
import type { Fonts } from '../text/fonts.ts'
import { missingIn } from '../text/lay-out.ts'
import type { Words } from '../text/words.ts'
import type { LaidPacket } from './lay-out-packet.ts'

/** More codes than these in one sentence help nobody. */
const mostCodes = 12

/** A warning where letters are printed as their codes, since the font has no picture of them. */
export function lettersMissing({ packet, sheets }: LaidPacket, fonts: Fonts): readonly Finding[] {
  const marks: readonly Mark[] = sheets.flatMap(sheet => sheet.drawings[0].marks)
  const codes = new Set<string>()
  const look = (words: Words, weight: keyof Fonts): void => {
    for (const code of missingIn(fonts[weight], words)) codes.add(code)
  }
  for (const mark of marks) if (mark.kind === 'text') look(mark.words, mark.weight)
  for (const { drawings } of sheets) look([drawings[0].caption.part ?? ''], 'regular')
  look([packet.title], 'regular')
  if (codes.size === 0) return []
  const named = [...codes].slice(0, mostCodes).join(', ')
  return [
    {
      rule: 'letters-missing',
      severity: 'warning',
      places: [],
      facts: { codes: codes.size > mostCodes ? `${named} and others` : named },
    },
  ]
}
