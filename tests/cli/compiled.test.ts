import { spawnSync } from 'node:child_process'
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { compiledOf, scriptsOf, wrapped } from '../../src/cli/compiled/scripts.ts'
import { laterFlag } from '../../src/cli/optimise-later.ts'
import { builtScripts } from './built-command.ts'

let folder = ''

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'paperjig-'))
  writeFileSync(join(folder, 'sum.cjs'), 'exports.sum = (a, b) => a + b')
  writeFileSync(
    join(folder, 'main.cjs'),
    "const { sum } = require('./sum.cjs'); exports.five = () => sum(2, 3)",
  )
})

afterEach(() => rmSync(folder, { recursive: true }))

const five = (): unknown => (scriptsOf(folder).load('main.cjs') as { five: () => unknown }).five()

describe('scripts that are kept compiled', () => {
  it('do the same without what is kept, with it, and with something else in its place', () => {
    expect(five()).toBe(5)
    const scripts = scriptsOf(folder)
    scripts.load('main.cjs')
    scripts.keep()
    const kept = compiledOf(join(folder, 'main.cjs'))
    expect(readdirSync(folder).sort()).toEqual([
      'main.cjs',
      'main.cjs.compiled',
      'sum.cjs',
      'sum.cjs.compiled',
    ])
    expect(five()).toBe(5)
    for (const broken of [
      Buffer.alloc(0),
      Buffer.from('no such thing'),
      readFileSync(kept).subarray(0, 40),
    ]) {
      writeFileSync(kept, broken)
      expect(five()).toBe(5)
    }
  })

  it('are loaded once, and ask Node for what is not of their folder', () => {
    writeFileSync(join(folder, 'twice.cjs'), "exports.same = require('./sum.cjs') === require('./sum.cjs')")
    writeFileSync(join(folder, 'path.cjs'), "exports.sep = require('node:path').posix.sep")
    expect(scriptsOf(folder).load('twice.cjs')).toEqual({ same: true })
    expect(scriptsOf(folder).load('path.cjs')).toEqual({ sep: '/' })
  })

  it('are, as they were built, taken under the flags of the command', () => {
    const names = readdirSync(builtScripts).filter(name => name.endsWith('.compiled'))
    expect(names.length).toBeGreaterThan(5)
    const child = `
      require('node:v8').setFlagsFromString(process.argv[1])
      const { readFileSync } = require('node:fs')
      const [folder, before, after, ...names] = process.argv.slice(2)
      const refused = names.filter(name => {
        const source = readFileSync(folder + '/' + name.replace('.compiled', ''), 'utf8')
        const cachedData = readFileSync(folder + '/' + name)
        return new (require('node:vm').Script)(before + source + after, { cachedData }).cachedDataRejected
      })
      console.log(JSON.stringify(refused))`
    const [before, after] = wrapped('|').split('|') as [string, string]
    const done = spawnSync(
      process.execPath,
      ['-e', child, '--', laterFlag, builtScripts, before, after, ...names],
      {
        encoding: 'utf8',
      },
    )
    expect(done.stderr).toBe('')
    expect(JSON.parse(done.stdout)).toEqual([])
  })
})
