import { expect, test } from 'vitest'
import { planWithCuts } from '../../model/model-of.ts'
import { keyText, papersOf, said } from '../sheets-of.ts'

const hole = (name: string, on: string, more = '') =>
  `hole: ${name}, on: ${on}, at: center, diameter: 4, depth: 6${more}`

test('holes that enter on three faces get a wrap, and it says why', () => {
  const [wrap] = papersOf(planWithCuts([hole('a', 'front'), hole('b', 'top'), hole('c', 'left')]), 'wrap')
  expect(keyText(wrap!.drawings[0])).toContain('A wrap since holes enter on 3 faces.')
})

test('holes on two faces that a mark-out shows get none', () => {
  expect(papersOf(planWithCuts([hole('a', 'front'), hole('b', 'top')]), 'wrap')).toEqual([])
})

test('beside a template a hole that is on no strip asks for a wrap, and a row does not', () => {
  const withTemplate = (cut: string) =>
    planWithCuts([hole('a', 'front'), cut]).replace('    cuts', '    transfer: template\n    cuts')
  const [wrap] = papersOf(withTemplate(hole('b', 'top')), 'wrap')
  expect(keyText(wrap!.drawings[0])).toContain('A wrap since b, on the top, is on no strip.')
  const row =
    'row: r, on: top, at: { left: 10, front: 6 }, toward: right, spacing: 20, count: 3, diameter: 4, depth: 6'
  expect(papersOf(withTemplate(row), 'wrap')).toEqual([])
})

test('a part that asks for panels gets them, where holes are in its ends alone', () => {
  const text = planWithCuts([hole('a', 'left')]).replace('    cuts', '    wrap: panels\n    cuts')
  for (const { bounds } of papersOf(text, 'wrap')[0]!.drawings) {
    for (const side of Object.values(bounds)) expect(Number.isFinite(side)).toBe(true)
  }
})

test('a hole that goes through is shown where it comes out, too', () => {
  const text = planWithCuts(['hole: a, on: left, at: { bottom: 12, front: 8 }, diameter: 4']).replace(
    '    cuts',
    '    wrap: panels\n    cuts',
  )
  const { marks } = papersOf(text, 'wrap')[0]!.drawings[0]
  expect(
    marks.filter(m => m.subject === 'plank.a.exit' && m.kind === 'path' && m.role === 'hidden'),
  ).toHaveLength(1)
  expect(said({ marks })).toContain('other end (right)')
})

test('a net of a block that nobody measured says that it closes on no other size', () => {
  const text = planWithCuts([hole('a', 'left')]).replace('    cuts', '    wrap: net\n    cuts')
  expect(keyText(papersOf(text, 'wrap')[0]!.drawings[0])).toContain('measure the block')
})
