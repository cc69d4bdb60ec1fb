/**
 * Measures the placing of letters by itself, warm, on parts that grow with the number of their holes so that these
 * stand equally near each other; prints a table with the exponent by which time grows. `tsx tools/bench-labels.ts`.
 * The floor is the least that any way of placing has to do: to sort the places that are wanted, and to ask once for
 * each of its first eight candidates whether it touches any ring, by a grid.
 */
import { lettering } from '../src/drawing/lettering.ts'
import { pathMark } from '../src/drawing/make-mark.ts'
import type { Point } from '../src/geometry/shape/point.ts'
import { rectangle } from '../src/geometry/shape/rectangle.ts'
import type { Placed } from '../src/model/feature.ts'
import { keyOf } from '../src/sheet/key/key-entry.ts'
import { emptyBoard } from '../src/sheet/label/board.ts'
import { isClear } from '../src/sheet/label/clear-space.ts'
import { boxAbout } from '../src/sheet/label/find-place.ts'
import { cutMarks } from '../src/sheet/template/cut-marks.ts'
import { putLetters } from '../src/sheet/template/letter-marks.ts'
import { randomFrom } from '../tests/geometry/generate/random.ts'
import { bundledFonts } from '../tests/text/bundled-font.ts'
import { type Placed as Placing, placedInRounds, placingTable, time } from './bench/placing.ts'

const quick = process.argv.includes('--quick')
const counts = quick ? [100, 400, 1600] : [100, 400, 1600, 6400]
const rounds = quick ? 3 : 7
const seed = 1
const fonts = bundledFonts()

/** How near the holes stand: the area of wood for each, as the side of a square in millimetres. */
const layouts = [
  ['far apart', 18],
  ['near', 9],
  ['too dense for letters', 5],
] as const

type Case = { readonly side: number; readonly holes: readonly Placed[] }

/** Holes of nine sizes scattered over a square, no two nearer than three quarters of the spacing. */
function scattered(count: number, spacing: number): Case {
  const random = randomFrom(seed)
  const across = Math.ceil(Math.sqrt(count))
  const size = (mm: number) =>
    ({ mm, basis: 'given', written: `${mm}`, source: { file: '', from: 0, to: 0 } }) as const
  const jitter = () => (random() - 0.5) * spacing * 0.25
  const holes = Array.from({ length: count }, (_, i): Placed => {
    const centre: Point = {
      x: ((i % across) + 0.5) * spacing + jitter(),
      y: (Math.floor(i / across) + 0.5) * spacing + jitter(),
    }
    const shape = { kind: 'bore', centre, diameter: size(1 + (i % 9) / 4), depth: 'through' } as const
    return { id: `h${i}`, cut: `h${i}`, face: 'front', shape, source: { file: '', from: 0, to: 0 } }
  })
  return { side: across * spacing, holes }
}

/** A board with the lines of a part on it, and no lettering yet. */
function drawn({ side, holes }: Case) {
  const board = emptyBoard()
  const area = { left: 0, right: side, bottom: 0, top: side }
  board.draw([pathMark({ layer: 'cut', subject: 'part' }, 'cut', [rectangle(area).outer])])
  board.draw(holes.flatMap(hole => cutMarks(hole, `part.${hole.id}`)))
  return { board, area }
}

/** Letters placed, and milliseconds of placing and of the floor, measured in turn on boards of their own. */
function measure(example: Case): Placing {
  const key = keyOf(example.holes)
  return placedInRounds(rounds, () => {
    const { board, area } = drawn(example)
    const floor = time(() => {
      const sorted = [...example.holes].sort((a, b) => a.id.localeCompare(b.id))
      for (const { shape } of sorted) {
        if (shape.kind !== 'bore') continue
        for (let way = 0; way < 8; way++) {
          const middle = {
            x: shape.centre.x + (way % 3) * 3 - 3,
            y: shape.centre.y + Math.floor(way / 3) * 4 - 4,
          }
          isClear(boxAbout(middle, { width: 2.5, height: lettering.large }), board.obstacles)
        }
      }
    })
    let left = 0
    const placing = time(() => {
      left = putLetters(key, 'part', board, area, fonts).length
    })
    return { placing, floor, left }
  })
}

placingTable('letters', layouts, counts, (count, spacing) => measure(scattered(count, spacing)))
