import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { keptPromise } from './promise.ts'

const folder = new URL('fixtures/corpus/', import.meta.url)
const files = readdirSync(folder).filter(name => name.endsWith('.yaml'))

describe('a hostile file gives findings and no plan', () => {
  it.each(files)('%s', name => {
    const [rule] = name.split('--')
    const { plan, findings } = keptPromise(new Uint8Array(readFileSync(new URL(name, folder))))
    expect(plan).toBeUndefined()
    expect(findings.map(finding => finding.rule)).toContain(rule)
  })
})
