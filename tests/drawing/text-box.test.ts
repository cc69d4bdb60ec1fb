import { expect, test } from 'vitest'
import type { Text } from '../../src/drawing/mark.ts'
import { textBox } from '../../src/drawing/text-box.ts'
import { layOut } from '../../src/text/lay-out.ts'
import type { Words } from '../../src/text/words.ts'
import { bundledFonts } from '../text/bundled-font.ts'

const fonts = bundledFonts()
const words: Words = ['Gate ', { whole: '2', over: '1', under: '2' }]
const { width, ascent, descent } = layOut(fonts.regular, words, 5)

const text = (more: Partial<Text> = {}): Text => ({
  kind: 'text',
  words,
  at: { x: 10, y: 20 },
  height: 5,
  align: 'start',
  angle: 0,
  weight: 'regular',
  ...more,
})

test.each<[Partial<Text>, { left: number; right: number; bottom: number; top: number }]>([
  [{}, { left: 10, right: 10 + width, bottom: 20 - descent, top: 20 + ascent }],
  [
    { align: 'middle' },
    { left: 10 - width / 2, right: 10 + width / 2, bottom: 20 - descent, top: 20 + ascent },
  ],
  [{ align: 'end' }, { left: 10 - width, right: 10, bottom: 20 - descent, top: 20 + ascent }],
  // turned to read upward, what was above is at the left
  [{ angle: Math.PI / 2 }, { left: 10 - ascent, right: 10 + descent, bottom: 20, top: 20 + width }],
  [
    { angle: Math.PI, align: 'end' },
    { left: 10, right: 10 + width, bottom: 20 - ascent, top: 20 + descent },
  ],
])('the box of a line with %o is around the whole line', (more, wanted) => {
  const box = textBox(fonts, text(more))
  for (const side of ['left', 'right', 'bottom', 'top'] as const)
    expect(box[side]).toBeCloseTo(wanted[side], 9)
})

test('a fraction reaches higher and lower than letters, and the box holds it', () => {
  const plain = textBox(fonts, text({ words: ['Gate'] }))
  const fraction = textBox(fonts, text())
  expect(fraction.top).toBeGreaterThan(plain.top)
  expect(fraction.bottom).toBeLessThan(plain.bottom)
})

test('bold is measured as bold', () => {
  const bold = textBox(fonts, text({ weight: 'bold' }))
  expect(bold.right).toBeGreaterThan(textBox(fonts, text()).right)
})
