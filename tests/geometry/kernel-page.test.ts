import { existsSync, readFileSync } from 'node:fs'
import { expect, test, vi } from 'vitest'

const read = (path: string) => readFileSync(new URL(`../../${path}`, import.meta.url), 'utf8')

test('every picture of the kernel page is there, and its arcs are true arcs', () => {
  const names = [...read('docs/kernel.md').matchAll(/\]\((kernel\/[\w-]+\.svg)\)/g)].map(m => m[1]!)
  expect(names.length).toBeGreaterThan(8)
  for (const name of names) {
    expect(existsSync(new URL(`../../docs/${name}`, import.meta.url)), name).toBe(true)
  }
  for (const name of ['data', 'pieces', 'raw-offset', 'steps', 'ellipse']) {
    expect(read(`docs/kernel/${name}.svg`)).toMatch(/<path d="M[^"]*A/)
  }
})

test('every file that the kernel page names exists', () => {
  const page = read('docs/kernel.md')
  const inGeometry = [...page.matchAll(/`((?:shape|measure|boolean)\/[\w-]+\.ts)`/g)].map(
    m => `src/geometry/${m[1]}`,
  )
  const others = [...page.matchAll(/`((?:src|tools|examples)\/[\w/-]+\.ts)`/g)].map(m => m[1]!)
  expect(inGeometry.length + others.length).toBeGreaterThan(6)
  for (const file of [...inGeometry, ...others]) {
    expect(existsSync(new URL(`../../${file}`, import.meta.url)), file).toBe(true)
  }
})

test('the example of the public entry runs and says what it found', async () => {
  const log = vi.spyOn(console, 'log').mockImplementation(() => {})
  await import('../../examples/kernel/gate-keeper.ts')
  const lines = log.mock.calls.map(([line]) => line as string)
  log.mockRestore()
  expect(lines).toEqual([
    '1 region, 3 holes, 2924.24 mm²',
    'thinnest wall 9.50 mm at (0.00, 20.00), beside back',
    'narrowest neck 40.00 mm at (19.25, 20.00)',
    'template 85.00 mm long, 3 of its edges are arcs',
    'old keeper: radius 15.94 mm, worst point 0.59 mm off',
    '47 points make the outline within 0.01 mm',
    'no corner of 60: no-room',
  ])
})
