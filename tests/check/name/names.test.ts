import { expect, test } from 'vitest'
import { labelTwice } from '../../../src/check/name/label-twice.ts'
import { nameUnused } from '../../../src/check/name/name-unused.ts'
import { found, only } from '../found.ts'

const plan = (head: string, parts: string) => `paperjig: 1\ntitle: Pier\nunits: mm\n${head}parts:\n${parts}`

test.each<[what: string, head: string, kind: string, name: string]>([
  ['a size', 'let: { board: 20, gauge: 60 }\n', 'let', 'gauge'],
  ['a stock', 'let: { board: 20 }\nstock: { plank: { thickness: board } }\n', 'stock', 'plank'],
  ['a pin', 'let: { board: 20 }\npins: { dowel: { diameter: 8 } }\n', 'pin', 'dowel'],
])('%s that nothing uses is found', (_, head, kind, name) => {
  const finding = only(nameUnused, plan(head, '  deck: { size: 200 x 90 x board }\n'))
  expect(finding).toMatchObject({ severity: 'note', facts: { kind, name } })
})

test('a name that is used, by another name too, is not found', () => {
  const head = 'let: { half: 10, board: half * 2 }\nstock: { plank: { thickness: board } }\n'
  expect(found(nameUnused, plan(head, '  deck: { size: 200 x 90, from: plank }\n'))).toEqual([])
})

test('two parts of one label are found, the one that one label', () => {
  const parts = (label: string) =>
    `  deck: { label: Plank, size: 200 x 90 x 20 }\n  rail: { label: ${label}, size: 200 x 30 x 20 }\n`
  expect(only(labelTwice, plan('', parts('Plank')))).toMatchObject({
    severity: 'warning',
    places: [{ part: 'rail' }, { part: 'deck' }],
  })
  expect(found(labelTwice, plan('', parts('Rail')))).toEqual([])
})
