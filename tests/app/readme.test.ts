import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { readJob } from '../../src/app/read-job.ts'

const readme = readFileSync(new URL('../../README.md', import.meta.url), 'utf8')
const blocks = [...readme.matchAll(/^```yaml\n(.*?)^```/gms)].map(([, yaml]) => yaml!)

/** A block that is no whole plan shows parts of one. */
const asPlan = (yaml: string) =>
  yaml.startsWith('paperjig:') ? yaml : `paperjig: 1\ntitle: Shown\nunits: inch\nparts:\n${yaml}`

test.each(blocks.map(yaml => [asPlan(yaml)]))('the plan in the README is read, and is sound: %s', text => {
  const { job, findings } = readJob({ text, file: 'README.md' }, undefined)
  expect(job).toBeDefined()
  expect(findings.filter(({ severity }) => severity !== 'note')).toEqual([])
})

test('the README shows plans', () => {
  expect(blocks.length).toBeGreaterThanOrEqual(2)
})
