/**
 * Number and letter drills, in inches. Source: ASME B94.11M, values as reprinted in a public code table for those
 * that tests/length/name-bit.test.ts lists with it; the others from memory.
 */

/** The drill's diameter in ten-thousandths of an inch, from number 1 to number 80. */
const numbered = [
  2280, 2210, 2130, 2090, 2055, 2040, 2010, 1990, 1960, 1935, 1910, 1890, 1850, 1820, 1800, 1770, 1730, 1695,
  1660, 1610, 1590, 1570, 1540, 1520, 1495, 1470, 1440, 1405, 1360, 1285, 1200, 1160, 1130, 1110, 1100, 1065,
  1040, 1015, 995, 980, 960, 935, 890, 860, 820, 810, 785, 760, 730, 700, 670, 635, 595, 550, 520, 465, 430,
  420, 410, 400, 390, 380, 370, 360, 350, 330, 320, 310, 292, 280, 260, 250, 240, 225, 210, 200, 180, 160,
  145, 135,
]

/** The drill's diameter in thousandths of an inch, from A to Z. */
const lettered = [
  234, 238, 242, 246, 250, 257, 261, 266, 272, 277, 281, 290, 295, 302, 316, 323, 332, 339, 348, 358, 368,
  377, 386, 397, 404, 413,
]

/** A drill by the name stamped on it: `#43` or `letter F`. */
export type DrillSize = { readonly name: string; readonly inches: number }

export const drillSizes: readonly DrillSize[] = [
  ...numbered.map((size, i) => ({ name: `#${i + 1}`, inches: size / 10_000 })),
  ...lettered.map((size, i) => ({ name: `letter ${String.fromCharCode(65 + i)}`, inches: size / 1000 })),
]
