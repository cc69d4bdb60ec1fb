/** The lengths of the two bars of a scale sheet, in millimetres. */
export type Bars = { readonly across: number; readonly along: number }

/** The bars of Letter and A4. */
export const usualBars: Bars = { across: 180, along: 240 }

/** The side of the square that belongs to bars, in whole tens: what stands free beside it is for its words. */
export function squareSide({ across, along }: Bars): number {
  return tens(Math.min(across, along) - 30)
}

/** The bars that there is room for, in whole tens and never longer than the usual ones. */
export function barsFor(width: number, height: number): Bars {
  return { across: Math.min(usualBars.across, tens(width)), along: Math.min(usualBars.along, tens(height)) }
}

function tens(length: number): number {
  return Math.floor(length / 10) * 10
}

/** Bars as they are typed, `180x240`; the usual ones where nothing is; nothing where no scale sheet has such bars. */
export function readBars(text: string | undefined): Bars | undefined {
  if (text === undefined) return usualBars
  const sides = /^\s*(\d{2,3})\s*[x×]\s*(\d{2,3})\s*$/i.exec(text)
  if (sides === null) return undefined
  const bars = { across: Number(sides[1]), along: Number(sides[2]) }
  const isBar = (length: number, most: number): boolean => length % 10 === 0 && length <= most
  return isBar(bars.across, usualBars.across) && isBar(bars.along, usualBars.along) && squareSide(bars) > 0
    ? bars
    : undefined
}
