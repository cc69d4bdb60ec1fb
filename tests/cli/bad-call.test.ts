import { expect } from 'vitest'
import { soundPlan, testInFolder } from './call.ts'

/** A call that cannot be meant, and the one sentence that answers it. */
const cases: readonly (readonly [words: readonly string[], sentence: string])[] = [
  [
    [],
    'say what to do: new, cards, check, print, strip, svg, scale, printer, shop or schema; paperjig --help shows how',
  ],
  [['prnt', 'rack.yaml'], "unknown command 'prnt'; did you mean print?"],
  [['print'], 'the plan file is missing; it stands before --part, which takes every name behind it'],
  [
    ['print', '--part', 'rail', 'rack.yaml'],
    'the plan file is missing; it stands before --part, which takes every name behind it',
  ],
  [['strip', 'rack.yaml'], 'the row is missing; say which strip, as in paperjig strip PLAN side-frame.posts'],
  [['print', 'rack.yaml', '--papr', 'a4'], "unknown option '--papr'; did you mean --paper?"],
  [['print', 'rack.yaml', '--paper'], "option '--paper <PAPER>' argument missing"],
  [['svg', 'rack.yaml', '--strict'], "unknown option '--strict'"],
  [['check', 'rack.yaml', 'b.yaml'], "too many arguments for 'check'. Expected 1 argument but got 2."],
  [['print', 'rack.yaml', '-o', ''], 'the name behind -o is empty; it wants the name of a file'],
  [['print', 'rack.yaml', '-o', 'out/'], 'out/ names a folder; -o wants the name of a file'],
  [
    ['svg', 'rack.yaml', '-o', '-'],
    'svg writes several files, which standard output cannot hold; name a folder with -o DIR',
  ],
  [['svg', '-'], 'a plan from standard input has no name to call the folder by; name one with -o DIR'],
  [['print', 'rak.yaml'], 'there is no file rak.yaml; did you mean rack.yaml?'],
  [['print', 'far/away.yaml'], 'there is no file far/away.yaml'],
  [['check', 'rack.yaml/x'], 'there is no file rack.yaml/x'],
  [['check', '.'], '. is a folder; give the plan file in it'],
  [['check', 'x'.repeat(300)], 'the name of the plan file is longer than any file name can be'],
  [['print', 'rack.yaml', '-o', 'none/rack.pdf'], 'there is no folder none to write into'],
  [['print', 'rack.yaml', '-o', 'rack.yaml/rack.pdf'], 'there is no folder rack.yaml to write into'],
  [['print', 'rack.yaml', '-o', '.'], '. is a folder, and a file is to be written there'],
  [['print', 'rack.yaml', '-o', 'rack.yaml'], 'rack.yaml is the plan itself; say another file with -o'],
  [
    ['print', 'rack.yaml', '-o', 'y'.repeat(300)],
    'the name of the file to be written is longer than any file name can be',
  ],
  [['svg', 'rack.yaml', '-o', 'none/rack'], 'there is no folder none to make none/rack in'],
  [['svg', 'rack.yaml', '-o', 'rack.yaml'], 'there is no folder rack.yaml to write into'],
  [['check', '\u001b[31mred\u202e'], 'there is no file ⟨U+001B⟩[31mred⟨U+202E⟩'],
]

for (const [words, sentence] of cases) {
  testInFolder(
    `paperjig ${JSON.stringify(words).slice(0, 80)} is answered with one sentence and code 2`,
    async folder => {
      await folder.write('rack.yaml', soundPlan)
      const { code, out, err } = await folder.call(words)
      const said = err.replace(/^nothing found\n/, '')
      expect({ code, out, said }).toEqual({ code: 2, out: '', said: `paperjig: ${sentence}\n` })
      expect(await folder.names()).toEqual(['rack.yaml'])
    },
  )
}

for (const [words, sentence] of [
  [
    ['--paper', 'a44'],
    'error: "a44" is no paper; wanted: letter, legal, tabloid, a4, a3, a5, or a width and height such as 210x297mm; did you mean "a4"?',
  ],
  [['--paper', '20x20mm'], 'error: "20x20mm" is no paper; wanted: sides from 100 mm to 5080 mm'],
  [['--part', 'rial'], 'error: there is no part "rial"; did you mean "rail"? (parts: rail)'],
] as const) {
  for (const command of ['print', 'svg']) {
    testInFolder(`${command} ${words.join(' ')} says what there is`, async folder => {
      await folder.write('rack.yaml', soundPlan)
      const { code, out, err } = await folder.call([command, 'rack.yaml', ...words])
      expect({ code, out, err }).toEqual({ code: 2, out: '', err: `plan\n  ${sentence}\n\n1 error\n` })
      expect(await folder.names()).toEqual(['rack.yaml'])
    })
  }
}

testInFolder('SOURCE_DATE_EPOCH that is no date is refused', async folder => {
  await folder.write('rack.yaml', soundPlan)
  const { code, err } = await folder.call(['print', 'rack.yaml'], { env: { SOURCE_DATE_EPOCH: 'today' } })
  expect({ code, err }).toEqual({
    code: 2,
    err: 'paperjig: SOURCE_DATE_EPOCH is "today"; it counts whole seconds since 1970\n',
  })
})
