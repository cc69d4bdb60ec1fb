import { expect } from 'vitest'
import { demoPlan, soundPlan, testInFolder } from './call.ts'

testInFolder('cards without a plan writes a blank card', async folder => {
  const { code, out, err } = await folder.call(['cards'])
  expect({ code, out, err }).toEqual({ code: 0, out: 'wrote cards.pdf: 1 page\n', err: '' })
  expect(await folder.names()).toEqual(['cards.pdf'])
})

testInFolder('cards --two --count 5 puts two on a page', async folder => {
  const { out } = await folder.call(['cards', '--two', '--count', '5', '--paper', 'a4', '-o', 'a.pdf'])
  expect(out).toBe('wrote a.pdf: 3 pages\n')
})

testInFolder('cards of a plan are named after it and do not touch it', async folder => {
  await folder.write('rack.yaml', soundPlan)
  const { code, out } = await folder.call(['cards', 'rack.yaml'])
  expect({ code, out }).toEqual({ code: 0, out: 'wrote rack-cards.pdf: 1 page\n' })
  expect((await folder.call(['cards', 'rack.yaml', '-o', 'rack.yaml'])).code).toBe(2)
})

testInFolder('cards of a plan from standard input go to standard output', async folder => {
  const { code, stdout } = await folder.call(['cards', '-'], { stdin: soundPlan })
  expect([code, stdout.subarray(0, 5).toString()]).toEqual([0, '%PDF-'])
})

testInFolder('what a check would find does not stop the cards: it is what they ask', async folder => {
  const { code, err } = await folder.call(['cards', demoPlan, '-o', 'car.pdf', '--part', 'roof'])
  expect({ code, err }).toEqual({ code: 0, err: '' })
})

for (const [words, sentence] of [
  [['--count', '0'], 'whole number from 1 to 100'],
  [['--count', '2.5'], 'whole number from 1 to 100'],
  [['--part', 'roof'], '--part wants the plan'],
  [[demoPlan, '--count', '3'], '--count is for blank cards'],
  [['--paper', 'a44'], 'did you mean "a4"'],
  [['--paper', '100x100mm'], 'has no room'],
  [['--two', '--paper', 'a5'], 'has no room'],
  [['--margin', 'wide'], 'no margin'],
  [['nowhere.yaml'], 'there is no file nowhere.yaml'],
] as const) {
  testInFolder(
    `cards ${words.join(' ').slice(-24)} is refused in a sentence, and nothing is written`,
    async folder => {
      const { code, err } = await folder.call(['cards', ...words])
      expect(code).toBe(2)
      expect(err).toContain(sentence)
      expect(await folder.names()).toEqual([])
    },
  )
}
