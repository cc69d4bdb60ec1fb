import { expect } from 'vitest'
import { soundPlan, testInFolder } from './call.ts'

const laughs = ['a: &a [x, x, x, x, x, x, x, x, x, x]']
for (const [last, next] of ['ab', 'bc', 'cd', 'de', 'ef', 'fg', 'gh', 'hi']) {
  laughs.push(`${next}: &${next} [${Array.from({ length: 10 }, () => `*${last}`).join(', ')}]`)
}

/** Files that are no plan, each with the place that the message has to give. */
const cases: Readonly<Record<string, readonly [content: string | Uint8Array, place: string]>> = {
  'an empty file': ['', 'bad.yaml:1:1'],
  'a text that is no YAML': ['paperjig: 1\nparts: [\n', 'bad.yaml:'],
  'a file of 50 MB': [Buffer.alloc(50e6, 'paperjig: 1\n'), 'bad.yaml:1:1'],
  'NUL bytes': [Buffer.from('paperjig: 1\ntitle: a\0b\n'), 'bad.yaml:2:9'],
  'a picture': [Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 13]), 'bad.yaml:1:1'],
  'a billion laughs': [`${laughs.join('\n')}\n`, 'bad.yaml:'],
  'brackets a hundred thousand deep': ['['.repeat(100_000), 'bad.yaml:1:'],
  'the wrong version': [soundPlan.replace('paperjig: 1', 'paperjig: 7'), 'bad.yaml:1:11'],
  'an unknown key': [soundPlan.replace('corners', 'corner'), 'bad.yaml:7:5'],
  'a size that is a sentence': [
    soundPlan.replace('120 x 30 x 8', 'about as long as the other'),
    'bad.yaml:6:',
  ],
  'a part of 10 km': [soundPlan.replace('120 x 30', '10000000 x 30'), 'bad.yaml:6:11'],
  'a size of zero': [soundPlan.replace('120 x 30', '0 x 30'), 'bad.yaml:6:11'],
}

for (const [what, [content, place]] of Object.entries(cases)) {
  for (const command of ['print', 'svg', 'check']) {
    testInFolder(`${command} of ${what} says where it is wrong, and writes nothing`, async folder => {
      await folder.write('bad.yaml', content)
      const { code, out, err } = await folder.call([command, 'bad.yaml'])
      expect(code).toBe(2)
      const said = command === 'check' ? out : err
      expect(said).toContain(`${place}`)
      expect(said).toMatch(/: error: \S.*\n/)
      expect(out + err).not.toMatch(/\n\s+at |fault of paperjig/)
      expect(command === 'check' ? err : out).toBe('')
      expect(await folder.names()).toEqual(['bad.yaml'])
    })
  }
}

testInFolder('50 MB on standard input are not waited for', async folder => {
  const { code, out } = await folder.call(['check', '-'], { stdin: Buffer.alloc(50e6, 'paperjig: 1\n') })
  expect(code).toBe(2)
  expect(out).toContain('standard input:1:1: error: ')
})
