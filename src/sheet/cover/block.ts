import type { Mark } from '../../drawing/mark.ts'
import type { Point } from '../../geometry/shape/point.ts'

/** Something that stands on a cover whole: how high it is, and its marks when it hangs from an upper left corner. */
export type Block = {
  readonly height: number
  readonly draw: (at: Point) => readonly Mark[]
  /** A heading does not stay behind at the foot of a page. */
  readonly withNext?: true
}

/** Blocks one below the other, on as many pages as it takes; one that is higher than a page stands alone. */
export function flow(blocks: readonly Block[], height: number): readonly (readonly Block[])[] {
  const pages: Block[][] = [[]]
  let left = height
  for (const together of kept(blocks)) {
    const wanted = together.reduce((sum, block) => sum + block.height, 0)
    if (wanted > left && pages.at(-1)!.length > 0) {
      pages.push([])
      left = height
    }
    pages.at(-1)!.push(...together)
    left -= wanted
  }
  return pages
}

/** Every block with the headings before it. */
function kept(blocks: readonly Block[]): readonly (readonly Block[])[] {
  const groups: Block[][] = []
  let open = false
  for (const block of blocks) {
    if (open) groups.at(-1)!.push(block)
    else groups.push([block])
    open = block.withNext === true
  }
  return groups
}

/** Blocks as they hang from an upper left corner. */
export function stacked(blocks: readonly Block[], at: Point): readonly Mark[] {
  let y = at.y
  return blocks.flatMap(({ height, draw }) => {
    const marks = draw({ x: at.x, y })
    y -= height
    return marks
  })
}

/** Blocks in rows of so many, `pitch` from one column to the next. */
export function inColumns(blocks: readonly Block[], columns: number, pitch: number): readonly Block[] {
  return Array.from({ length: Math.ceil(blocks.length / columns) }, (_, i) =>
    sideBySide(blocks.slice(i * columns, (i + 1) * columns), pitch),
  )
}

function sideBySide(blocks: readonly Block[], pitch: number): Block {
  return {
    height: Math.max(...blocks.map(({ height }) => height)),
    draw: ({ x, y }) => blocks.flatMap(({ draw }, i) => draw({ x: x + i * pitch, y })),
  }
}
