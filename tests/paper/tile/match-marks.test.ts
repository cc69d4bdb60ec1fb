import { expect, test } from 'vitest'
import type { Bounds } from '../../../src/geometry/shape/contour.ts'
import { matchMarks } from '../../../src/paper/tile/match-marks.ts'
import type { Seam } from '../../../src/paper/tile/seams.ts'
import { apart, inkBox } from '../../drawing/ink-box.ts'
import { bundledFonts } from '../../text/bundled-font.ts'

const fonts = bundledFonts()

/** An upright seam of 60 mm, and words that run up to it from the left, so many mm below its upper end. */
const seam: Seam = { before: 0, after: 1, side: 'right', from: { x: 100, y: 0 }, to: { x: 100, y: 60 } }
const wordsAt = (top: number): Bounds => ({ left: 20, right: 99, bottom: 60 - top - 5, top: 60 - top })

function lettersOf(boxes: readonly Bounds[]): readonly Bounds[] {
  const taken = boxes.map(box => ({ box, harm: 1 }))
  const [marks] = matchMarks([seam], taken, false)
  return marks!.flatMap(m => (m.kind === 'text' ? [inkBox(fonts, m)] : []))
}

test.each([9.5, 9, 8.8])(
  'with words %s mm below its end, a seam has its letters where these can be read',
  top => {
    // the ruler of a strip below them leaves the mark no other place
    const ruler: Bounds = { left: 20, right: 180, bottom: 20, top: 60 - top - 6 }
    const words = wordsAt(top)
    const letters = lettersOf([words, ruler])
    expect(letters).toHaveLength(4)
    for (const letter of letters) expect(apart(letter, words, 0.3)).toBe(true)
  },
)

test('where nothing is free, a mark covers as little as it can', () => {
  const everywhere: Bounds = { left: 0, right: 200, bottom: 0, top: 60 }
  const twice: Bounds = { left: 0, right: 200, bottom: 48, top: 60 }
  const upper = (taken: readonly Bounds[]) => Math.max(...lettersOf(taken).map(({ top }) => top))
  expect(upper([everywhere])).toBeGreaterThan(48)
  expect(upper([everywhere, twice])).toBeLessThanOrEqual(48)
})

test('a mark stands on lines rather than on letters, and on neither where there is room for it', () => {
  const over = (bottom: number, top: number): Bounds => ({ left: 80, right: 120, bottom, top })
  const letters = { box: over(47, 60), harm: 10 }
  const lines = { box: over(0, 47), harm: 0.1 }
  const highest = (taken: Parameters<typeof matchMarks>[1]) =>
    Math.max(
      ...matchMarks([seam], taken, false)[0]!.flatMap(m => (m.kind === 'text' ? [inkBox(fonts, m).top] : [])),
    )
  expect(highest([])).toBeGreaterThan(47)
  expect(highest([lines])).toBeGreaterThan(47)
  expect(highest([letters, lines])).toBeLessThan(47)
})

test('a mark takes no more than its diamond and its letters: it stands between lettering that leaves these free', () => {
  const corners = [
    { left: 104, right: 120, bottom: 53.2, top: 60 },
    { left: 104, right: 120, bottom: 40, top: 48.8 },
  ].map(box => ({ box, harm: 10 }))
  const [marks] = matchMarks([seam], corners, false)
  const upper = marks!.flatMap(m => (m.kind === 'text' ? [inkBox(fonts, m)] : [])).slice(2)
  for (const letter of upper) {
    expect(letter.bottom).toBeGreaterThan(48.8)
    expect(letter.top).toBeLessThan(53.2)
  }
})
