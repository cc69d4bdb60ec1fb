import fc from 'fast-check'
import { expect, it } from 'vitest'
import { lineAround, locate } from '../../src/finding/locate.ts'

it('lines and columns count from 1', () => {
  expect(locate('', 0)).toEqual({ line: 1, column: 1 })
  expect(locate('ab\ncd', 0)).toEqual({ line: 1, column: 1 })
  expect(locate('ab\ncd', 2)).toEqual({ line: 1, column: 3 })
  expect(locate('ab\ncd', 3)).toEqual({ line: 2, column: 1 })
  expect(locate('ab\ncd', 5)).toEqual({ line: 2, column: 3 })
})

it('CR LF ends one line', () => {
  expect(locate('ab\r\ncd\r\nef', 4)).toEqual({ line: 2, column: 1 })
  expect(locate('ab\r\ncd\r\nef', 9)).toEqual({ line: 3, column: 2 })
})

it('columns count characters, tabs as one, a byte order mark as none', () => {
  expect(locate('😀😀x', 4)).toEqual({ line: 1, column: 3 })
  expect(locate('\t\tx', 2)).toEqual({ line: 1, column: 3 })
  expect(locate('\uFEFFab', 1)).toEqual({ line: 1, column: 1 })
  expect(locate('\uFEFFab', 0)).toEqual({ line: 1, column: 1 })
  expect(locate('a\n\uFEFFb', 3)).toEqual({ line: 2, column: 2 })
})

it('an offset outside the text stands at its end or beginning', () => {
  expect(locate('ab', 99)).toEqual({ line: 1, column: 3 })
  expect(locate('ab', -1)).toEqual({ line: 1, column: 1 })
})

it('agrees with splitting the text into lines', () => {
  const text = fc.array(fc.constantFrom('a', '\n', '\r\n', ' ', '😀')).map(pieces => pieces.join(''))
  fc.assert(
    fc.property(text, fc.nat({ max: 60 }), (written, offset) => {
      const at = Math.min(offset, written.length)
      const before = written.slice(0, at).split('\n')
      const { line, column } = locate(written, at)
      expect(line).toBe(before.length)
      if (!/[\uD800-\uDBFF]$/.test(written.slice(0, at))) {
        expect(column).toBe([...before.at(-1)!].length + 1)
      }
      const around = lineAround(written, at)
      expect(around.text).toBe(written.split('\n')[line - 1]!.replace(/\r$/, ''))
      expect(around.from).toBe(before.slice(0, -1).join('\n').length + (before.length > 1 ? 1 : 0))
    }),
  )
})
