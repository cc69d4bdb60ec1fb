import { expect, test } from 'vitest'
import { ByteSink } from '../../src/render/pdf/byte-sink.ts'

test('pieces, lines and numbers come out in their order, past the room that there was at first', () => {
  const sink = new ByteSink()
  const line = 'a line of letters'
  for (let i = 0; i < 10_000; i++) {
    sink.add(new Uint8Array([0x28, 0x29]))
    sink.addDecimal(-i / 8, 3)
    sink.addLine(line)
  }
  const wanted = Array.from({ length: 10_000 }, (_, i) => `()${i === 0 ? '' : '-'}${i / 8}${line}\n`).join('')
  expect(sink.length).toBe(wanted.length)
  expect(Buffer.from(sink.bytes()).toString('latin1')).toBe(wanted)
})

test('what was taken from it stays as it is when it is used again', () => {
  const sink = new ByteSink()
  sink.addLetters('one')
  const taken = sink.bytes()
  sink.clear()
  sink.addLetters('two')
  expect([taken, sink.bytes()].map(bytes => Buffer.from(bytes).toString('latin1'))).toEqual(['one', 'two'])
})
