import { expect, test } from 'vitest'
import { lineStyles } from '../../src/drawing/line-role.ts'
import { fillMark, linesMark, pathMark, textMark } from '../../src/drawing/make-mark.ts'
import { boundsOfMarks } from '../../src/drawing/mark-bounds.ts'
import { textBox } from '../../src/drawing/text-box.ts'
import { circle } from '../../src/geometry/shape/circle.ts'
import { bundledFonts } from '../text/bundled-font.ts'

const fonts = bundledFonts()
const belongs = { layer: 'cut' } as const

test('lines count with half their width', () => {
  const marks = [
    linesMark(belongs, 'wide', [
      [
        { x: 1, y: 2 },
        { x: 5, y: 2 },
      ],
    ]),
  ]
  const half = lineStyles.wide.width / 2
  expect(boundsOfMarks(fonts, marks)).toEqual({
    left: 1 - half,
    right: 5 + half,
    bottom: 2 - half,
    top: 2 + half,
  })
})

test('arcs count with their outermost points', () => {
  const half = lineStyles.cut.width / 2
  const { left, top } = boundsOfMarks(fonts, [pathMark(belongs, 'cut', [circle({ x: 3, y: 4 }, 2)])])
  expect([left, top]).toEqual([1 - half, 6 + half])
})

test('fills have no width of line, and text counts with its whole box', () => {
  const fill = fillMark(belongs, [{ outer: circle({ x: 3, y: 4 }, 2), holes: [] }])
  expect(boundsOfMarks(fonts, [fill])).toEqual({ left: 1, right: 5, bottom: 2, top: 6 })
  const text = textMark(belongs, ['Loom'], { x: 0, y: 0 }, 5)
  if (text.kind !== 'text') throw new Error(text.kind)
  expect(boundsOfMarks(fonts, [text])).toEqual(textBox(fonts, text))
})

test('several marks have one rectangle around them', () => {
  const at = (x: number, y: number) => fillMark(belongs, [{ outer: circle({ x, y }, 1), holes: [] }])
  expect(boundsOfMarks(fonts, [at(0, 0), at(10, 5)])).toEqual({ left: -1, bottom: -1, right: 11, top: 6 })
})
