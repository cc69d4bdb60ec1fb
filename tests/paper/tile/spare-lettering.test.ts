import { expect, test } from 'vitest'
import { textMark } from '../../../src/drawing/make-mark.ts'
import { measureMark } from '../../../src/paper/tile/measured-mark.ts'
import { spareLettering } from '../../../src/paper/tile/spare-lettering.ts'
import type { Tile } from '../../../src/paper/tile/tile.ts'
import { plain } from '../../../src/text/words.ts'
import { apart } from '../../drawing/ink-box.ts'
import { bundledFonts } from '../../text/bundled-font.ts'

const fonts = bundledFonts()

/** Two tiles side by side, with a seam at x = 100 of which each shows 5 mm more. */
const tiles: readonly Tile[] = [
  {
    cell: { left: 0, right: 100, bottom: 0, top: 20 },
    window: { left: 0, right: 105, bottom: 0, top: 20 },
  },
  {
    cell: { left: 100, right: 200, bottom: 0, top: 20 },
    window: { left: 95, right: 200, bottom: 0, top: 20 },
  },
]

const line = (words: string, x: number) =>
  measureMark(textMark({ layer: 'text' }, [words], { x, y: 8 }, 3.5), fonts)

const boxesOf = ({ marks }: ReturnType<typeof spareLettering>) =>
  Object.fromEntries(
    marks.flatMap(({ mark, box }) => (mark.kind === 'text' ? [[plain(mark.words), box] as const] : [])),
  )

test('lettering over a seam is moved into a tile that shows it, clear of the seam', () => {
  const spared = spareLettering([line('bore 4 mm, through', 70)], tiles)
  const { left, right } = boxesOf(spared)['bore 4 mm, through']!
  expect(right < 100 || left > 100).toBe(true)
  expect(spared).toMatchObject({ moved: 1, spoilt: 0 })
})

test('where other words are in its way, it is put beside them and not on them', () => {
  const spared = spareLettering(
    [line('pegs', 45), line('bore 4 mm, through', 80), line('top up', 125)],
    tiles,
  )
  const boxes = boxesOf(spared)
  expect(spared).toMatchObject({ moved: 1, spoilt: 0 })
  for (const other of ['pegs', 'top up'])
    expect(apart(boxes['bore 4 mm, through']!, boxes[other]!, 1)).toBe(true)
})

test('where no place is free, it is told to be hard to read, as is what no tile holds', () => {
  const full = [line('xxxxxxxxxxxxxxxxxxxxxxxxxxx', 2), line('xxxxxxxxxxxxxxxxxxxxxxxxxxx', 112)]
  expect(spareLettering([...full, line('bore 4 mm, through', 80)], tiles)).toMatchObject({
    moved: 1,
    spoilt: 1,
  })
  expect(spareLettering([line('x'.repeat(60), 20)], tiles)).toMatchObject({ moved: 1, spoilt: 1 })
})
