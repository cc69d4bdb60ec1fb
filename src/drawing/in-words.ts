import type { Caption, Drawing } from './drawing.ts'

/** What a drawing is called in lists: its sheet and the pieces that it serves. */
export function sheetInWords({ sheet, pieces }: Caption): string {
  return pieces === undefined ? sheet : `${sheet}, ${pieces}`
}

/** A drawing for somebody who cannot see it: "Side frame: template for the face side, piece 1 of 2". */
export function drawingInWords({ caption, description }: Drawing): string {
  const named = `${caption.part ?? caption.plan}: ${sheetInWords(caption)}`
  return description === undefined ? named : `${named}; ${description}`
}
