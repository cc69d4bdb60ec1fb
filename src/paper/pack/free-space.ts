import { coincident } from '../../number/tolerance.ts'
import type { Extent } from './item.ts'

/** A rectangle, `x` to the right and `y` down from the upper left corner of the space. */
export type Box = { readonly x: number; readonly y: number } & Extent

/** A place for a rectangle, with what is left over beside it of the free rectangle: the lesser and the greater width. */
export type Place = { readonly box: Box; readonly left: number; readonly leftLong: number }

/** Which place is the best: where the least is left over beside it, or as far up as can be. */
export type Rule = 'least-left' | 'uppermost'

/** What is free of a page, while it is filled. */
export type FreeSpace = {
  /** The best place for a rectangle, in the upper left corner of a free one. */
  readonly find: (extent: Extent, rule: Rule) => Place | undefined
  /** Takes a rectangle away. */
  readonly take: (box: Box) => void
  /** False where a rectangle surely has no place, whichever way it is turned. */
  readonly mayHold: (extent: Extent) => boolean
  readonly area: () => number
  readonly copy: () => FreeSpace
}

/**
 * Free space as all of the largest free rectangles, which overlap.
 * Source: Jylänki, A Thousand Ways to Pack the Bin, 2010 (maximal rectangles; best short side fit, bottom left).
 */
export function freeSpace(whole: Extent): FreeSpace {
  return spaceOf([{ x: 0, y: 0, ...whole }], whole.width * whole.height)
}

function spaceOf(start: readonly Box[], startArea: number): FreeSpace {
  let free = start
  let area = startArea
  let [longest, broadest] = reaches(free)
  return {
    find: (extent, rule) => {
      const { width, height } = extent
      let best: Place | undefined
      for (const rect of free) {
        const across = rect.width - width
        const along = rect.height - height
        if (across < -coincident || along < -coincident) continue
        const left = Math.min(across, along)
        // most are worse at first sight
        if (rule === 'least-left' && best !== undefined && left > best.left) continue
        const place = {
          box: { x: rect.x, y: rect.y, width, height },
          left,
          leftLong: Math.max(across, along),
        }
        if (best === undefined || better(place, best, rule)) best = place
      }
      return best
    },
    take: box => {
      const kept: Box[] = []
      const cut: Box[] = []
      for (const rect of free) {
        if (overlap(rect, box)) putAround(rect, box, cut)
        else kept.push(rect)
      }
      const left = cut.filter((rect, i) => !isWithinAnother(rect, i, cut, kept))
      free = kept.concat(left)
      area -= box.width * box.height
      ;[longest, broadest] = reaches(free)
    },
    mayHold: ({ width, height }) =>
      Math.max(width, height) <= longest + coincident && Math.min(width, height) <= broadest + coincident,
    area: () => area,
    copy: () => spaceOf(free, area),
  }
}

export function better(a: Place, b: Place, rule: Rule): boolean {
  if (rule === 'uppermost') {
    const down = a.box.y + a.box.height - (b.box.y + b.box.height)
    return down < 0 || (down === 0 && a.box.x < b.box.x)
  }
  if (a.left !== b.left) return a.left < b.left
  if (a.leftLong !== b.leftLong) return a.leftLong < b.leftLong
  return a.box.y !== b.box.y ? a.box.y < b.box.y : a.box.x < b.box.x
}

/** The longest side of any of the rectangles, and the longest of their shorter sides. */
function reaches(boxes: readonly Box[]): [number, number] {
  let longest = 0
  let broadest = 0
  for (const { width, height } of boxes) {
    longest = Math.max(longest, width, height)
    broadest = Math.max(broadest, Math.min(width, height))
  }
  return [longest, broadest]
}

function overlap(a: Box, b: Box): boolean {
  return (
    a.x < b.x + b.width - coincident &&
    b.x < a.x + a.width - coincident &&
    a.y < b.y + b.height - coincident &&
    b.y < a.y + a.height - coincident
  )
}

/** Puts on a list the largest rectangles of `rect` that spare `box`: at its left, right, upper and lower side. */
function putAround({ x, y, width, height }: Box, box: Box, list: Box[]): void {
  const right = box.x + box.width
  const lower = box.y + box.height
  const put = (part: Box): void => {
    if (part.width > coincident && part.height > coincident) list.push(part)
  }
  put({ x, y, width: box.x - x, height })
  put({ x: right, y, width: x + width - right, height })
  put({ x, y, width, height: box.y - y })
  put({ x, y: lower, width, height: y + height - lower })
}

/** Whether a rectangle lies within one that is kept, or within another cut one; of two equal ones the first stays. */
function isWithinAnother(rect: Box, index: number, cut: readonly Box[], kept: readonly Box[]): boolean {
  return (
    kept.some(other => within(rect, other)) ||
    cut.some((other, i) => i !== index && within(rect, other) && (i < index || !within(other, rect)))
  )
}

function within(a: Box, b: Box): boolean {
  return (
    a.x >= b.x - coincident &&
    a.y >= b.y - coincident &&
    a.x + a.width <= b.x + b.width + coincident &&
    a.y + a.height <= b.y + b.height + coincident
  )
}
