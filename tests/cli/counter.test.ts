import { expect, test } from 'vitest'
import { printPdf } from '../../src/app/print-pdf.ts'
import { printSvg } from '../../src/app/print-svg.ts'
import { pageCounter } from '../../src/cli/output/counter.ts'
import { surroundings } from '../app/surroundings.ts'
import { demoPlan, soundPlan, testInFolder } from './call.ts'

function streamThat(isTTY: boolean) {
  const written: string[] = []
  const stream = { isTTY, write: (text: string) => written.push(text) > 0 }
  return { stream: stream as unknown as NodeJS.WriteStream, written }
}

/** What is written when page after page is told of at these milliseconds. */
function counted(isTTY: boolean, ...times: readonly number[]): readonly string[] {
  const { stream, written } = streamThat(isTTY)
  const clock = [0, ...times]
  const { tell, clear } = pageCounter(stream, () => clock.shift()!)
  for (const [i] of times.entries()) tell(i + 1, times.length)
  clear()
  return written.map(text => text.replaceAll('\r\x1b[K', '>'))
}

test('pages are counted on a terminal once the work has taken half a second', () => {
  expect(counted(true, 100, 499, 500, 700)).toEqual(['>page 3 of 4', '>page 4 of 4', '>'])
})

test('quick work is not counted, and leaves no line to wipe', () => {
  expect(counted(true, 100, 200, 499)).toEqual([])
})

test('the counter does not write more often than it can be read', () => {
  expect(counted(true, 600, 650, 699, 700)).toEqual(['>page 1 of 4', '>page 4 of 4', '>'])
})

test('in a pipe nothing is counted', () => {
  expect(counted(false, 600, 1200)).toEqual([])
})

test('every page is told of, in its order, as PDF and as SVG', async () => {
  const plan = {
    text: `${soundPlan}  beam:\n    size: 600 x 30 x 8\n`,
    file: 'rack.yaml',
  }
  const told: string[] = []
  const progress = (page: number, count: number) => told.push(`${page}/${count}`)
  const { pages } = await printPdf(plan, {}, { ...surroundings, progress })
  const all = Array.from({ length: pages }, (_, i) => `${i + 1}/${pages}`)
  expect(pages).toBeGreaterThan(1)
  expect(told).toEqual(all)
  told.length = 0
  printSvg(plan, {}, { ...surroundings, progress })
  expect(told).toEqual(all)
})

testInFolder('a print into a pipe has no control sequences on its error stream', async folder => {
  const { err } = await folder.call(['print', demoPlan, '-o', 'car.pdf'])
  expect(err).not.toMatch(/\x1b|\r/)
})
