import { faultAt, type LengthFault, type Read, read, refused } from './fault.ts'
import { numberAt } from './number-token.ts'
import { unitOfWord, type WrittenUnit } from './unit.ts'

/** A piece of a written size, with its offsets in it. */
export type Token = { readonly from: number; readonly to: number } & (
  | { readonly kind: 'number'; readonly value: number; readonly fraction: boolean }
  | { readonly kind: 'word'; readonly word: string }
  | { readonly kind: 'unit'; readonly unit: WrittenUnit }
  | { readonly kind: 'sign'; readonly sign: '+' | '-' | '*' | '/' }
  | { readonly kind: 'bracket'; readonly bracket: '(' | ')' }
  | { readonly kind: 'comma' }
  | { readonly kind: 'tilde' }
  | { readonly kind: 'end' }
)

/** Letters, digits and `_`, with a letter first: a name, a unit, a function or the `x` between sizes. */
const word = /\p{L}[\p{L}0-9_]*/uy

/** Signs as keyboards, phones and word processors write them. */
const signs: Readonly<Record<string, '+' | '-' | '*' | '/'>> = {
  '+': '+',
  '-': '-',
  '−': '-',
  '‐': '-',
  '‑': '-',
  '–': '-',
  '*': '*',
  '×': '*',
  '·': '*',
  '/': '/',
  '÷': '/',
  '⁄': '/',
  '∕': '/',
}

/** Marks of units as keyboards, phones and word processors write them. Two foot marks together are an inch mark. */
const unitMarks: Readonly<Record<string, WrittenUnit>> = {
  '"': 'inch',
  '″': 'inch',
  '”': 'inch',
  '“': 'inch',
  "'": 'foot',
  '′': 'foot',
  '’': 'foot',
  '‘': 'foot',
  '°': 'degree',
  º: 'degree',
}

/** The pieces of a text, the last of them `end`; or the first thing in it that can be no part of a size. */
export function tokens(text: string): Read<readonly Token[]> {
  const found: Token[] = []
  let at = 0
  while (at < text.length) {
    if (isSpace(text, at)) {
      at += 1
      continue
    }
    const token = tokenAt(text, at)
    if ('code' in token) return refused(token)
    found.push(token)
    at = token.to
  }
  found.push({ kind: 'end', from: text.length, to: text.length })
  return read(found)
}

export function isSpace(text: string, at: number): boolean {
  return /\s/.test(text.charAt(at))
}

function tokenAt(text: string, at: number): Token | LengthFault {
  const number = numberAt(text, at)
  if (number !== undefined) return 'code' in number ? number : { kind: 'number', ...number }

  const letter = text.charAt(at)
  const one = { from: at, to: at + 1 }
  if (Object.hasOwn(signs, letter)) return { kind: 'sign', sign: signs[letter]!, ...one }
  if (Object.hasOwn(unitMarks, letter)) {
    const unit = unitMarks[letter]!
    const doubled = unit === 'foot' && unitMarks[text.charAt(at + 1)] === 'foot'
    return doubled ? { kind: 'unit', unit: 'inch', from: at, to: at + 2 } : { kind: 'unit', unit, ...one }
  }
  if (letter === '(' || letter === ')') return { kind: 'bracket', bracket: letter, ...one }
  if (letter === ',') return { kind: 'comma', ...one }
  if (letter === '~') return { kind: 'tilde', ...one }

  word.lastIndex = at
  const letters = word.exec(text)?.[0]
  if (letters !== undefined) return wordToken(text, at, letters)

  const to = at + String.fromCodePoint(text.codePointAt(at)!).length
  return faultAt(text, { from: at, to }, 'strange-character', 'a number, a name or a sign: + - * / ( )')
}

function wordToken(text: string, from: number, letters: string): Token {
  const to = from + letters.length
  const unit = unitOfWord(letters)
  if (unit === undefined) return { kind: 'word', word: letters, from, to }
  // "in." and "ft." are written with a point by the trade
  return { kind: 'unit', unit, from, to: text.charAt(to) === '.' ? to + 1 : to }
}
