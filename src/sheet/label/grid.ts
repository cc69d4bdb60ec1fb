import type { Bounds } from '../../geometry/shape/contour.ts'

/** Things by where they are: the plane in square cells, so that one question asks about its neighbours alone. */
export type Grid<T> = {
  readonly add: (box: Bounds, thing: T) => void
  readonly remove: (box: Bounds, thing: T) => void
  /** Whether a test holds for something that may touch the box. What lies in several cells may be asked about again. */
  readonly some: (box: Bounds, test: (thing: T) => boolean) => boolean
}

/**
 * In millimetres; about twice as large as a letter: smaller, and a word stands in too many; larger, and each holds
 * too much.
 */
export const cellSize = 10

/** More cells than this in either direction no paper has; it keeps the numbers of cells apart. */
const stride = 2 ** 22

export function emptyGrid<T>(): Grid<T> {
  const cells = new Map<number, T[]>()
  return {
    add: (box, thing) => {
      eachCell(box, number => {
        const cell = cells.get(number)
        if (cell === undefined) cells.set(number, [thing])
        else cell.push(thing)
        return false
      })
    },
    remove: (box, thing) => {
      eachCell(box, number => {
        const cell = cells.get(number)
        const at = cell?.indexOf(thing) ?? -1
        if (at >= 0) cell!.splice(at, 1)
        return false
      })
    },
    some: (box, test) => eachCell(box, number => cells.get(number)?.some(test) ?? false),
  }
}

/** Visits the cells that a box lies in until one is enough. */
function eachCell({ left, right, bottom, top }: Bounds, enough: (cell: number) => boolean): boolean {
  const column = (at: number): number => Math.floor(at / cellSize)
  for (let i = column(left); i <= column(right); i++) {
    for (let j = column(bottom); j <= column(top); j++) if (enough(i * stride + j)) return true
  }
  return false
}
