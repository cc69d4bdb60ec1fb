import type { Drawing } from '../../src/drawing/drawing.ts'
import { frameOf } from '../../src/paper/frame.ts'
import { extentOf } from '../../src/paper/pack/item.ts'
import { pack } from '../../src/paper/pack/pack.ts'
import { lying, papers } from '../../src/paper/papers.ts'
import { tiled } from '../../src/paper/tile/tile-sheet.ts'
import { defaultWorkshop } from '../../src/workshop/defaults.ts'
import { randomFrom } from '../../tests/geometry/generate/random.ts'
import { randomPacket } from '../../tests/paper/pack/random-packet.ts'
import { fonts, partDrawing } from '../../tests/paper/tile/large-drawing.ts'
import { median } from './measure.ts'

const seed = 1
const ways = [papers.letter, lying(papers.letter)]
const roomsFor = (shows: 'whole' | 'tile') =>
  ways.map(way => extentOf(frameOf(way, defaultWorkshop, shows).body))

/** Milliseconds of one call when the program is warm: the median of several. */
function warm(rounds: number, run: () => void): number {
  run()
  const times = Array.from({ length: rounds }, () => {
    const start = performance.now()
    run()
    return performance.now() - start
  })
  return median(times)
}

export type Packed = {
  readonly items: number
  readonly ms: number
  readonly pages: number
  readonly areaBound: number
}

/** Packing by itself: the templates of so many parts, invented. */
export function packing(parts: number, rounds: number): Packed {
  const items = randomPacket(randomFrom(seed), parts)
  const rooms = roomsFor('whole')
  const options = { gap: 5 }
  const { pages, areaBound } = pack(items, rooms, options)
  const ms = warm(rounds, () => pack(items, rooms, options))
  return { items: items.length, ms, pages: pages.length, areaBound }
}

export type Tiled = { readonly marks: number; readonly ms: number; readonly tiles: number }

/** Tiling by itself: a plate of this side in millimetres, with a hole for every square of so many millimetres. */
export function tiling(side: number, pitch: number, rounds: number): Tiled {
  const drawing = plate(side, pitch)
  const rooms = roomsFor('tile')
  const overlap = 10
  const { tiles } = tiled(drawing, rooms, overlap, fonts)
  const ms = warm(rounds, () => tiled(drawing, rooms, overlap, fonts))
  return { marks: drawing.marks.length, ms, tiles: tiles.length }
}

function plate(side: number, pitch: number): Drawing {
  const random = randomFrom(seed)
  const across = Math.floor(side / pitch)
  const jitter = () => (random() - 0.5) * pitch * 0.5
  const holes = Array.from({ length: across * across }, (_, i) => ({
    x: ((i % across) + 0.5) * pitch + jitter(),
    y: (Math.floor(i / across) + 0.5) * pitch + jitter(),
    radius: 2 + (i % 3),
  }))
  return partDrawing({ width: side, height: side, radius: 12 }, holes)
}
