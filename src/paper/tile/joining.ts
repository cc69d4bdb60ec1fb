import type { Tiling } from './tiling.ts'

/** How a tile is joined to its neighbours, in a line: "Fold at –··–. Right side over page 4, lower side over pages 6, 7." */
export function joining({ seams }: Tiling, tile: number, pages: readonly number[]): string {
  const named = (tiles: readonly number[]): string =>
    `${tiles.length === 1 ? 'page' : 'pages'} ${tiles.map(i => pages[i]).join(', ')}`
  const over = (side: 'right' | 'below', words: string): readonly string[] => {
    const under = seams.filter(seam => seam.before === tile && seam.side === side).map(({ after }) => after)
    return under.length === 0 ? [] : [`${words} over ${named(under)}`]
  }
  const sides = [...over('right', 'right side'), ...over('below', 'lower side')]
  if (sides.length > 0) return `Fold at –··–: ${sides.join(', ')}, letter on letter.`
  const above = seams.filter(({ after }) => after === tile).map(({ before }) => before)
  return above.length === 0 ? '' : `Lies under ${named(above)}, letter on letter.`
}
