import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { readModel } from '../../src/app/read-model.ts'
import { checkRules } from '../../src/check/registry.ts'
import { locate } from '../../src/finding/locate.ts'

const plansIn = (folder: string) =>
  readdirSync(new URL(folder, import.meta.url)).map(file => ({
    file,
    text: readFileSync(new URL(`${folder}/${file}`, import.meta.url), 'utf8'),
  }))

const faulty = plansIn('faulty')
const sound = plansIn('sound')

/** A faulty plan's name begins with its rule, and the line at fault ends with `# here`. */
describe('a plan with one fault has that finding and no other', () => {
  test.each(faulty)('$file', ({ file, text }) => {
    const { model, findings } = readModel({ text, file })
    expect(model).toBeDefined()
    expect(findings.map(({ rule }) => rule)).toEqual([file.split('--')[0]])
    const wanted = text.split('\n').findIndex(line => line.endsWith('# here')) + 1
    expect(locate(text, findings[0]!.places[0]!.source!.from).line).toBe(wanted)
  })
})

describe('a sound plan has no finding at all', () => {
  test.each(sound)('$file', ({ file, text }) => {
    const { model, findings } = readModel({ text, file })
    expect(model).toBeDefined()
    expect(findings).toEqual([])
  })
})

test('there are thirty faulty plans, one at least for every rule, and fifteen sound ones', () => {
  expect(faulty.length).toBeGreaterThanOrEqual(30)
  expect(sound.length).toBeGreaterThanOrEqual(15)
  const shown = new Set(faulty.map(({ file }) => file.split('--')[0]))
  expect(checkRules.filter(rule => !shown.has(rule))).toEqual([])
})
