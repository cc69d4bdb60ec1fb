import fc from 'fast-check'
import { expect, test } from 'vitest'
import { textMark } from '../../../src/drawing/make-mark.ts'
import type { Mark } from '../../../src/drawing/mark.ts'
import type { Bounds } from '../../../src/geometry/shape/contour.ts'
import { breakLettering } from '../../../src/paper/tile/break-lettering.ts'
import { holds } from '../../../src/paper/tile/cut-marks.ts'
import { type MeasuredMark, measureMark } from '../../../src/paper/tile/measured-mark.ts'
import type { Tile } from '../../../src/paper/tile/tile.ts'
import { plain, type Words } from '../../../src/text/words.ts'
import { bundledFonts } from '../../text/bundled-font.ts'

const fonts = bundledFonts()
const overlap = 10
const size = 100

/** A row of tiles to the right, or a column of them upwards, so many of 100 mm each, 60 mm wide. */
function tilesAlong(upright: boolean, count: number): readonly Tile[] {
  return Array.from({ length: count }, (_, i) => {
    const [from, to] = [i * size, (i + 1) * size]
    const [low, high] = [i === 0 ? from : from - overlap / 2, i + 1 === count ? to : to + overlap / 2]
    const box = (a: number, b: number): Bounds =>
      upright ? { left: 0, right: 60, bottom: a, top: b } : { left: a, right: b, bottom: 0, top: 60 }
    return { cell: box(from, to), window: box(low, high) }
  })
}

function broken(mark: Mark, tiles: readonly Tile[]): readonly MeasuredMark[] {
  return breakLettering([measureMark(mark, fonts)], tiles, fonts)
}

const said = (pieces: readonly MeasuredMark[]) =>
  pieces.map(({ mark }) => (mark.kind === 'text' ? plain(mark.words) : ''))

const bore: Words = ['bore 8 mm leaning 10° toward the right and ', { whole: '7', over: '1', under: '2' }]
const rest = '° toward the top, through, counterbore 18 mm, 6 mm deep, brad point bit'

test('a line that is longer than a tile goes on beyond the seam, a fraction with the letters that touch it', () => {
  const tiles = tilesAlong(false, 4)
  const mark = textMark({ layer: 'text' }, [...bore, rest], { x: 20, y: 30 }, 3.5)
  const pieces = broken(mark, tiles)
  expect(pieces.length).toBeGreaterThan(1)
  expect(said(pieces).join(' ')).toBe(`bore 8 mm leaning 10° toward the right and 7 1/2${rest}`)
  pieces.forEach((piece, i) => {
    expect(tiles.some(({ window }) => holds(window, piece.box))).toBe(true)
    expect(piece.mark).toMatchObject({ at: { y: 30 }, height: 3.5 })
    if (i > 0) expect(piece.box.left).toBeGreaterThan(pieces[i - 1]!.box.right)
  })
})

test('whatever is said in whatever direction, all of it is whole on some tile, in its order', () => {
  const word = fc.string({
    minLength: 1,
    maxLength: 12,
    unit: fc.constantFrom(...'abcdefghijklmnopqrstuvwxyz0123456789'),
  })
  const turns = fc.constantFrom(0, 1, 2, 3)
  fc.assert(
    fc.property(fc.array(word, { minLength: 2, maxLength: 40 }), turns, (words, turn) => {
      const tiles = tilesAlong(turn % 2 === 1, 8)
      const angle = (turn * Math.PI) / 2
      // from the lower left, or on the way back from the far end
      const at = [
        { x: 2, y: 30 },
        { x: 30, y: 2 },
        { x: 8 * size - 2, y: 30 },
        { x: 30, y: 8 * size - 2 },
      ][turn]!
      const pieces = broken(textMark({ layer: 'text' }, [words.join(' ')], at, 3.5, { angle }), tiles)
      expect(said(pieces).join(' ')).toBe(words.join(' '))
      for (const { box } of pieces) expect(tiles.some(({ window }) => fits(box, window))).toBe(true)
      if (pieces.length > 1) {
        for (const { box } of pieces) expect(tiles.some(({ window }) => holds(window, box))).toBe(true)
      }
    }),
    { numRuns: 300 },
  )
})

test('letters get smaller where seams take the room that a line needs, and a line with a word longer than a tile stays', () => {
  const tiles = tilesAlong(false, 2)
  const words = Array.from({ length: 13 }, () => 'counterbore').join(' ')
  const [mark] = [textMark({ layer: 'text' }, [words], { x: 2, y: 30 }, 2)]
  const tight = broken(mark, tiles)
  expect(tight.length).toBeGreaterThan(1)
  for (const { mark, box } of tight) {
    expect(mark).toMatchObject({ height: 2 * 0.8 })
    expect(tiles.some(({ window }) => holds(window, box))).toBe(true)
  }
  const long = textMark({ layer: 'text' }, ['x'.repeat(120)], { x: 2, y: 30 }, 3.5)
  expect(broken(long, tiles).map(({ mark }) => mark)).toEqual([long])
})

function fits(box: Bounds, window: Bounds): boolean {
  return (
    box.right - box.left <= window.right - window.left && box.top - box.bottom <= window.top - window.bottom
  )
}
