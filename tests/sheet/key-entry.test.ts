import { expect, test } from 'vitest'
import { isPlaced } from '../../src/model/feature.ts'
import { keyOf, letterOf } from '../../src/sheet/key/key-entry.ts'
import { partWithCuts } from '../model/model-of.ts'

const keyFor = (cuts: readonly string[]) =>
  keyOf(partWithCuts(cuts).drawn.features.filter(isPlaced)).map(({ letter, members }) => [
    letter,
    members.map(m => m.id).join(' '),
  ])

test('holes for one bit to one depth have one letter, whatever they are called and wherever they stand', () => {
  expect(
    keyFor([
      'hole: a, at: { left: 10, bottom: 10 }, diameter: 4',
      'hole: b, at: { left: 20, bottom: 10 }, diameter: 5',
      'hole: c, at: { left: 30, bottom: 10 }, diameter: 4, depth: 6',
      'hole: d, at: { left: 40, bottom: 10 }, diameter: 4',
      'row: e, at: { left: 50, bottom: 10 }, toward: right, spacing: 8, count: 2, diameter: 4, depth: 6',
    ]),
  ).toEqual([
    ['A', 'a d'],
    ['B', 'b'],
    ['C', 'c e.1 e.2'],
  ])
})

test('holes that lean another way, or have another mouth or bit, have letters of their own', () => {
  const at = (left: number) => `at: { left: ${left}, bottom: 10 }, diameter: 4`
  const lean = 'lean: { toward: right, angle: 8 }'
  expect(
    keyFor([
      `hole: a, ${at(10)}`,
      `hole: b, ${at(20)}, ${lean}`,
      `hole: c, ${at(30)}, lean: { toward: left, angle: 8 }`,
      `hole: d, ${at(40)}, lean: { toward: right, angle: 9 }`,
      `hole: e, ${at(50)}, countersink: 8`,
      `hole: f, ${at(60)}, countersink: { diameter: 8, angle: 82 }`,
      `hole: g, ${at(70)}, counterbore: 8 x 2`,
      `hole: h, ${at(80)}, bit: brad`,
      `hole: i, ${at(90)}, ${lean}`,
      `hole: j, on: back, ${at(90)}, countersink: 8`,
    ]),
  ).toEqual([
    ['A', 'a'],
    ['B', 'b i'],
    ['C', 'c'],
    ['D', 'd'],
    ['E', 'e'],
    ['F', 'f'],
    ['G', 'g'],
    ['H', 'h'],
    ['J', 'j'],
  ])
})

test('a diameter calculated along two ways is one bit', () => {
  expect(
    keyFor([
      'hole: a, at: { left: 10, bottom: 10 }, diameter: 0.1 + 0.2',
      'hole: b, at: { left: 20, bottom: 10 }, diameter: 0.3',
    ]),
  ).toEqual([['A', 'a b']])
})

test('holes come first, then slots, then notches, each kind in the order of the plan', () => {
  expect(
    keyFor([
      'notch: n, on: bottom, at: { left: 10 }, size: 12 x 7',
      'slot: s, at: { left: 10, bottom: 20 }, size: 12 x 5',
      'hole: h, at: { left: 60, bottom: 20 }, diameter: 4',
      'slot: t, at: { left: 30, bottom: 20 }, size: 12 x 4',
    ]),
  ).toEqual([
    ['A', 'h'],
    ['B', 's'],
    ['C', 't'],
    ['D', 'n'],
  ])
})

test('slots of one size have one letter unless their ends or depths differ', () => {
  expect(
    keyFor([
      'slot: a, at: { left: 10, bottom: 20 }, size: 12 x 5',
      'slot: b, at: { left: 25, bottom: 20 }, size: 12 x 5',
      'slot: c, at: { left: 40, bottom: 20 }, size: 12 x 5, ends: round',
      'slot: d, at: { left: 55, bottom: 20 }, size: 12 x 5, depth: 4',
    ]),
  ).toEqual([
    ['A', 'a b'],
    ['B', 'c'],
    ['C', 'd'],
  ])
})

test('letters leave out I and O, which are read as 1 and 0, and go on after Z', () => {
  const letters = Array.from({ length: 700 }, (_, i) => letterOf(i))
  expect(letters.slice(0, 26).join(' ')).toBe('A B C D E F G H J K L M N P Q R S T U V W X Y Z AA AB')
  expect(letters.some(l => /[IO]/.test(l))).toBe(false)
  expect(new Set(letters).size).toBe(700)
  expect(letters[24 + 24 * 24]).toBe('AAA')
})
