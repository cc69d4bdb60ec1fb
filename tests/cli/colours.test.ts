import { expect, test } from 'vitest'
import { paintOn } from '../../src/cli/output/colours.ts'

function stream(isTTY: boolean | undefined, hasColors: boolean): NodeJS.WriteStream {
  return { isTTY, hasColors: () => hasColors } as unknown as NodeJS.WriteStream
}

test('an error is red on a terminal that shows colours', () => {
  expect(paintOn(stream(true, true))('error', 'error')).toBe('\u001b[31merror\u001b[39m')
})

test('nothing is coloured on a terminal that shows none, as under NO_COLOR', () => {
  expect(paintOn(stream(true, false))('error', 'error')).toBe('error')
})

test('nothing is coloured on what is no terminal', () => {
  expect(paintOn(stream(undefined, true))('error', 'error')).toBe('error')
})
