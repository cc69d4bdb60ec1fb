import { PNG } from 'pngjs'
import type { Picture } from './raster.ts'

const white = 255
/** Of mid grey, between one picture and the next. */
const bar = { width: 4, grey: 128 } as const

/**
 * A PNG of three pictures side by side: what was, both over each other, what is. Where they are over each other, ink of
 * both is black, ink that was there alone is red, and ink that has come is blue. Pages of two sizes share their upper
 * left corner.
 */
export function beforeOverlayAfter(before: Picture, after: Picture): Uint8Array {
  const width = Math.max(before.width, after.width)
  const height = Math.max(before.height, after.height)
  const png = new PNG({ width: 3 * width + 2 * bar.width, height })
  png.data = Buffer.alloc(4 * png.width * height, bar.grey)
  const put = (panel: number, x: number, y: number, [red, green, blue]: Colour): void => {
    png.data.set([red, green, blue, white], 4 * (y * png.width + panel * (width + bar.width) + x))
  }
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const [was, is] = [greyAt(before, x, y), greyAt(after, x, y)]
      put(0, x, y, [was, was, was])
      put(1, x, y, [is, Math.min(was, is), was])
      put(2, x, y, [is, is, is])
    }
  }
  return PNG.sync.write(png)
}

type Colour = readonly [red: number, green: number, blue: number]

function greyAt({ width, height, grey }: Picture, x: number, y: number): number {
  return x < width && y < height ? grey[y * width + x]! : white
}
