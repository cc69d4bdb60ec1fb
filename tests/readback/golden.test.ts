import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { PNG } from 'pngjs'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { compareWithGolden, type Goldens } from './golden.ts'
import { type Picture, readPng } from './raster.ts'

let place = ''
beforeEach(() => {
  place = mkdtempSync(join(tmpdir(), 'golden-'))
})
afterEach(() => rmSync(place, { recursive: true }))

const goldens = (rewrite: boolean): Goldens => ({
  folder: pathToFileURL(join(place, 'golden/')),
  changed: pathToFileURL(join(place, 'changed/')),
  rewrite,
})
const shown = () => join(place, 'changed', 'page.png')

/** A white page with a black column of pixels. */
function page(column: number, width = 30): Picture {
  const height = 20
  const grey = Uint8Array.from({ length: width * height }, (_, i) => (i % width === column ? 0 : 255))
  return { width, height, grey }
}

function rewritten(picture: Picture): void {
  expect(() => compareWithGolden('page', picture, goldens(true))).toThrow('is rewritten')
}

test('a picture is compared with the golden that was written of it', () => {
  expect(() => compareWithGolden('page', page(4), goldens(false))).toThrow('there is no golden')
  rewritten(page(4))
  expect(existsSync(shown())).toBe(false)
  compareWithGolden('page', page(4), goldens(false))
})

/** The colours of a row of the three pictures, each pixel as a letter. */
function row(file: string, y: number): string {
  const { width, data } = PNG.sync.read(readFileSync(file))
  const letters = { '255,255,255': '.', '0,0,0': '#', '255,0,0': 'r', '0,0,255': 'b', '128,128,128': '|' }
  return Array.from({ length: width }, (_, x) => {
    const at = 4 * (y * width + x)
    const colour = [...data.subarray(at, at + 3)].join(',')
    return letters[colour as keyof typeof letters] ?? '?'
  }).join('')
}

const columns = (...at: readonly (readonly [number, string])[]): string =>
  Array.from({ length: 30 }, (_, x) => at.find(([column]) => column === x)?.[1] ?? '.').join('')

test.each([
  ['fails', false],
  ['is rewritten', true],
])('a changed golden that %s is shown before, overlaid and after, side by side', (_, rewrite) => {
  rewritten(page(4))
  expect(() => compareWithGolden('page', page(9), goldens(rewrite))).toThrow('golden-diff/page.png')
  expect(row(shown(), 10)).toBe(
    [columns([4, '#']), columns([4, 'r'], [9, 'b']), columns([9, '#'])].join('||||'),
  )
})

test('pages of two sizes are shown over each other too', () => {
  rewritten(page(4, 22))
  expect(() => compareWithGolden('page', page(4, 30), goldens(false))).toThrow('in its size')
  expect(row(shown(), 0)).toBe([columns([4, '#']), columns([4, '#']), columns([4, '#'])].join('||||'))
})

test('once the golden is right again nothing is shown any more', () => {
  rewritten(page(4))
  expect(() => compareWithGolden('page', page(9), goldens(false))).toThrow()
  compareWithGolden('page', page(4), goldens(false))
  expect(existsSync(shown())).toBe(false)
})

test('a golden is rewritten as the picture is', () => {
  rewritten(page(4))
  rewritten(page(9))
  expect(readPng(readFileSync(join(place, 'golden', 'page.png')))).toEqual(page(9))
})
