import type { Tiling } from './tiling.ts'

/**
 * How a tile is joined to its neighbours, in a line: "Fold at –··–: right side over page 4, lower side over pages 6, 7, letter
 * on letter."; and the same in fewer words. Nothing of a tile that has no neighbours.
 */
export function joining({ seams }: Tiling, tile: number, pages: readonly number[]): readonly string[] {
  const named = (tiles: readonly number[]): string =>
    `${tiles.length === 1 ? 'page' : 'pages'} ${tiles.map(i => pages[i]).join(', ')}`
  const over = (side: 'right' | 'below', words: string): readonly string[] => {
    const under = seams.filter(seam => seam.before === tile && seam.side === side).map(({ after }) => after)
    return under.length === 0 ? [] : [`${words} over ${named(under)}`]
  }
  const sides = [...over('right', 'right side'), ...over('below', 'lower side')]
  if (sides.length > 0) {
    const fold = `Fold at –··–: ${sides.join(', ')}`
    return [`${fold}, letter on letter.`, `${fold.replaceAll(/ side| pages?/g, '')}.`]
  }
  const above = seams.filter(({ after }) => after === tile).map(({ before }) => before)
  return above.length === 0 ? [] : [`Lies under ${named(above)}, letter on letter.`, `Under ${named(above)}.`]
}
