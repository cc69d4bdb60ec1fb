import { expect, test } from 'vitest'
import { lettering } from '../../src/drawing/lettering.ts'
import { type LineRole, lineStyles } from '../../src/drawing/line-role.ts'

const roles = Object.keys(lineStyles) as LineRole[]

/** Source: ISO 128 line widths, from memory; each is √2 of the one before, rounded. */
const series = [0.13, 0.18, 0.25, 0.35, 0.5, 0.7, 1]

test.each(roles)('the width of a %s line is one of the standard series', role => {
  expect(series).toContain(lineStyles[role].width)
})

/** Source: ISO 128, wide to narrow 2 : 1, from memory. */
test('a wide line stands two steps of the series above a narrow one', () => {
  expect(series.indexOf(lineStyles.wide.width) - series.indexOf(lineStyles.cut.width)).toBe(2)
})

/** Source: ISO 3098 lettering heights. */
test.each(Object.entries(lettering))('%s lettering has a height of the standard series', (_, height) => {
  expect([1.8, 2.5, 3.5, 5, 7, 10]).toContain(height)
})

/** Solid lines are cut, drill (the same line, told by its ring and cross), thin and wide; the rest have dashes of their own. */
test('kinds of line with dashes are told apart by them', () => {
  const dashed = roles.map(role => lineStyles[role].dashes).filter(d => d.length > 0)
  expect(new Set(dashed.map(d => d.join(' '))).size).toBe(dashed.length)
  expect(dashed).toHaveLength(4)
})

test('dashes come in pairs of ink and white, so that every turn through them is alike', () => {
  for (const role of roles) expect(lineStyles[role].dashes.length % 2).toBe(0)
})
