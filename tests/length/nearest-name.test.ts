import fc from 'fast-check'
import { expect, test } from 'vitest'
import { nearestName } from '../../src/length/nearest-name.ts'

const keys = ['diameter', 'depth', 'spacing', 'count', 'corners', 'left', 'right', 'top', 'at', 'mm']

test.each([
  ['diamter', 'diameter', 'a letter missing'],
  ['deepth', 'depth', 'a letter too many'],
  ['spaicng', 'spacing', 'two letters changed about'],
  ['Count', 'count', 'a capital'],
  ['corner', 'corners', 'a letter missing'],
  ['rihgt', 'right', 'two letters changed about'],
  ['mn', 'mm', 'one letter of two'],
  ['m', 'mm', 'one letter missing of two'],
])('"%s" was meant to be "%s": %s', (found, wanted) => {
  expect(nearestName(found, keys)).toBe(wanted)
})

test.each(['', 'z', 'zz', 'thickness', 'colour', 'bottom', 'x'.repeat(100)])(
  'nothing is near "%s"',
  found => {
    expect(nearestName(found, keys)).toBeUndefined()
  },
)

test('of two equally near names the first counts', () => {
  expect(nearestName('bat', ['cat', 'hat'])).toBe('cat')
  expect(nearestName('bat', ['hat', 'cat'])).toBe('hat')
})

test('the cutoff is a third of the longer word, at least one letter', () => {
  expect(nearestName('abcde', ['abcxx'])).toBeUndefined()
  expect(nearestName('abcdef', ['abcdxx'])).toBe('abcdxx')
  expect(nearestName('abcdef', ['abcxxx'])).toBeUndefined()
})

test('a name is nearest to itself, and to itself with one letter changed', () => {
  const word = fc.stringMatching(/^[a-z][a-z0-9-]{3,20}$/)
  fc.assert(
    fc.property(word, fc.nat(), (name, where) => {
      expect(nearestName(name, ['other', name])).toBe(name)
      const at = where % name.length
      expect(nearestName(`${name.slice(0, at)}~${name.slice(at + 1)}`, [name])).toBe(name)
    }),
  )
})

test('long lists and long words are looked through in bounded time', () => {
  const endless = function* () {
    for (let i = 0; ; i++) yield `name${i}`
  }
  expect(nearestName('nothing-like-it-at-all', endless())).toBeUndefined()
  expect(nearestName('a'.repeat(1e6), ['a'.repeat(1e6)])).toBeUndefined()
})
