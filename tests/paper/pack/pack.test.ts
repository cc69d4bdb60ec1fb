import fc from 'fast-check'
import { expect, test } from 'vitest'
import { frameOf } from '../../../src/paper/frame.ts'
import { asItLies, type Extent, type Item, type Spot } from '../../../src/paper/pack/item.ts'
import { pack } from '../../../src/paper/pack/pack.ts'
import { lying, papers } from '../../../src/paper/papers.ts'
import { defaultWorkshop } from '../../../src/workshop/defaults.ts'
import { randomFrom } from '../../geometry/generate/random.ts'
import { randomPacket } from './random-packet.ts'

const gap = 4
const rooms = [papers.letter, lying(papers.letter)].map(paper => {
  const { body } = frameOf(paper, defaultWorkshop)
  return { width: body.right - body.left, height: body.top - body.bottom }
})

const one = (group: string, width: number, height: number): Item => ({ group, shapes: [{ width, height }] })

const extentAt = (items: readonly Item[], { item, shape, turned }: Spot): Extent =>
  asItLies(items[item]!.shapes[shape]!, turned)

function expectSound(items: readonly Item[], pages: ReturnType<typeof pack>['pages']): void {
  const placed = pages.flatMap(page => page.spots.map(({ item }) => item))
  expect(placed.sort((a, b) => a - b)).toEqual(items.map((_, i) => i))
  for (const { room, spots } of pages) {
    const { width, height } = rooms[room!]!
    const boxes = spots.map(spot => ({ ...spot, ...extentAt(items, spot) }))
    boxes.forEach((a, i) => {
      expect(Math.min(a.x, a.y)).toBeGreaterThanOrEqual(0)
      expect(a.x + a.width).toBeLessThanOrEqual(width + 1e-6)
      expect(a.y + a.height).toBeLessThanOrEqual(height + 1e-6)
      for (const b of boxes.slice(i + 1)) {
        const apart = Math.max(
          a.x - b.x - b.width,
          b.x - a.x - a.width,
          a.y - b.y - b.height,
          b.y - a.y - a.height,
        )
        expect(apart).toBeGreaterThan(gap - 1e-5)
      }
    })
  }
}

test('everything lies on one page once, within the free space, and a cutting gap from everything else', () => {
  const side = fc.double({ min: 5, max: 158, noNaN: true })
  const item = fc.record({
    group: fc.constantFrom('a', 'b', 'c', 'd', 'e'),
    shapes: fc.array(fc.record({ width: side, height: side }), { minLength: 1, maxLength: 3 }),
  })
  fc.assert(
    fc.property(fc.array(item, { maxLength: 25 }), items => {
      const { pages, areaBound } = pack(items, rooms, { gap })
      expectSound(items, pages)
      expect(pages.length).toBeGreaterThanOrEqual(areaBound)
      expect(pack(items, rooms, { gap }).pages).toEqual(pages)
    }),
    { numRuns: 100 },
  )
})

test('200 random packets take at most a tenth more pages than their areas alone, and none takes more than one more', () => {
  let used = 0
  let bound = 0
  for (let seed = 1; seed <= 200; seed++) {
    const random = randomFrom(seed)
    const items = randomPacket(random, 5 + Math.floor(random() * 40))
    const { pages, areaBound } = pack(items, rooms, { gap })
    expect([seed, pages.length - areaBound <= 1]).toEqual([seed, true])
    used += pages.length
    bound += areaBound
  }
  expect(used / bound).toBeLessThanOrEqual(1.1)
})

test('a strip is turned where it fits only so, or saves a page, and stays upright where it needs not be', () => {
  const turnedOn = (items: readonly Item[]) =>
    pack(items, [{ width: 100, height: 200 }], { gap }).pages.map(({ spots }) =>
      spots.map(({ turned }) => turned),
    )
  expect(turnedOn([one('long', 180, 20)])).toEqual([[true]])
  expect(turnedOn([one('short', 90, 20)])).toEqual([[false]])
  expect(turnedOn([one('wall', 70, 200), one('strip', 90, 20)])).toEqual([[false, true]])
})

test('paper lies only where that saves a page or nothing else can hold an item', () => {
  const roomsOf = (...items: readonly Item[]) => pack(items, rooms, { gap }).pages.map(({ room }) => room)
  expect(roomsOf(one('small', 50, 50))).toEqual([0])
  expect(roomsOf(one('long', 250, 50))).toEqual([1])
})

test('pieces of one part stay on one page where that costs no page', () => {
  const items = ['a', 'b', 'c', 'd'].flatMap(group => Array.from({ length: 3 }, () => one(group, 90, 60)))
  const { pages } = pack(items, rooms, { gap })
  expect(pages).toHaveLength(2)
  for (const { spots } of pages) expect(new Set(spots.map(({ item }) => items[item]!.group)).size).toBe(2)
})

test('the first shape is taken where it costs no page, and another where it saves one', () => {
  const shapes = [
    { width: 180, height: 60 },
    { width: 80, height: 100 },
  ]
  const shapesOf = (count: number) =>
    pack(
      Array.from({ length: count }, (_, i) => ({ group: `${i}`, shapes })),
      rooms,
      { gap },
    ).pages.map(({ spots }) => spots.map(({ shape }) => shape))
  expect(shapesOf(1)).toEqual([[0]])
  expect(shapesOf(4)).toEqual([[1, 1, 1, 1]])
})

test('a page that was begun takes what there is room for beside what lies on it', () => {
  const started = [{ room: rooms[0]!, taken: { width: rooms[0]!.width, height: 120 } }]
  const items = [one('key', 150, 90), one('other', 150, 120)]
  const { pages } = pack(items, rooms, { gap, started })
  expect(pages.map(({ spots }) => spots.map(({ item }) => item))).toEqual([[0], [1]])
  expect(pages[0]!.spots[0]!.y).toBeCloseTo(120 + gap, 9)
})

test('the rest of a page that was begun goes to its own group first', () => {
  const taken = { width: rooms[0]!.width, height: 120 }
  const started = ['a', 'b', 'c'].map(group => ({ room: rooms[0]!, taken, group }))
  const items = [one('c', 150, 90), one('b', 150, 90), one('a', 150, 90)]
  const { pages } = pack(items, rooms, { gap, started })
  expect(pages.map(({ spots }) => spots.map(({ item }) => items[item]!.group))).toEqual([['a'], ['b'], ['c']])
})

test('nothing to put down takes no page', () => {
  expect(pack([], rooms, { gap })).toEqual({ pages: [], areaBound: 0 })
})

test('what fits nowhere is a fault of the caller', () => {
  expect(() => pack([one('mast', 300, 300)], rooms, { gap })).toThrow(RangeError)
})
