import { expect, test } from 'vitest'
import { textBox } from '../../src/drawing/text-box.ts'
import { middleOfBounds } from '../../src/geometry/measure/bounds.ts'
import type { Point } from '../../src/geometry/shape/point.ts'
import { plain } from '../../src/text/words.ts'
import { expectClear } from './clear.ts'
import { everyDrawing, firstDrawing, fonts, markOutsOf, textsOf } from './sheets-of.ts'

/** A disc of 120 mm with an axle and circles of holes, each with a diameter of its own. */
function disc(...circles: readonly string[]): string {
  const lines = circles.map((circle, i) => `      - { hole-circle: c-${i}, at: center, ${circle} }\n`)
  return `paperjig: 1
title: Loom dobby
units: mm
parts:
  disc:
    round: 120
    thickness: 18
    cuts:
      - { hole: axle, at: center, diameter: 10 }
${lines.join('')}`
}

/** Letters by what they say, each with its middle measured from the middle of the disc. */
function lettersOn(text: string): ReadonlyMap<string, readonly Point[]> {
  const letters = new Map<string, Point[]>()
  for (const mark of textsOf(firstDrawing(text).marks)) {
    const says = plain(mark.words)
    if (mark.subject === 'key' || mark.weight !== 'bold' || !/^[A-Z]$/.test(says)) continue
    const { x, y } = middleOfBounds(textBox(fonts, mark))
    letters.set(says, [...(letters.get(says) ?? []), { x: x - 60, y: y - 60 }])
  }
  return letters
}

const countsOn = (text: string) =>
  Object.fromEntries([...lettersOn(text)].map(([says, at]) => [says, at.length]))

test('every hole of a circle has its letter where the disc has holes of other kinds', () => {
  expect(countsOn(disc('circle: 90, count: 12, diameter: 6'))).toEqual({ A: 1, B: 12 })
  expect(countsOn(disc('circle: 90, count: 8, diameter: 6', 'circle: 50, count: 6, diameter: 4'))).toEqual({
    A: 1,
    B: 8,
    C: 6,
  })
})

test('where all holes are alike the first of a circle has a letter', () => {
  expect(countsOn(disc('circle: 90, count: 12, diameter: 10'))).toEqual({ A: 2 })
})

test('where there is not room for a letter at each hole the first has one, as with more holes than anybody letters', () => {
  expect(countsOn(disc('circle: 24, count: 8, diameter: 5')).B).toBe(1)
  expect(countsOn(disc('circle: 108, count: 40, diameter: 2')).B).toBe(1)
})

test.each([0, 10, 30, 45])(
  'letters stand outside a circle that begins at %i°, nearest to their own holes',
  start => {
    const letters = lettersOn(disc(`circle: 80, count: 6, diameter: 6, start: ${start}`)).get('B')!
    const holes = Array.from({ length: 6 }, (_, i) => {
      const angle = ((start + 60 * i) / 180) * Math.PI
      return { x: 40 * Math.cos(angle), y: 40 * Math.sin(angle) }
    })
    for (const hole of holes) {
      const near = letters.filter(({ x, y }) => Math.hypot(x - hole.x, y - hole.y) < 12)
      expect(near).toHaveLength(1)
      expect(Math.hypot(near[0]!.x, near[0]!.y)).toBeGreaterThan(42)
    }
  },
)

test('letters round circles touch nothing, on templates and on mark-outs', () => {
  const text = disc('circle: 90, count: 8, diameter: 6', 'circle: 50, count: 6, diameter: 4')
  expectClear(firstDrawing(text).marks)
  for (const drawing of everyDrawing(markOutsOf(`${text}transfer: mark-out\n`)[0]!))
    expectClear(drawing.marks)
})
