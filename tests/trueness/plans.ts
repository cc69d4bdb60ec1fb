import { readdirSync, readFileSync } from 'node:fs'
import { basename } from 'node:path'
import { fileURLToPath } from 'node:url'

/** Every plan under `examples/`, and plans of large and odd sizes. */
export function plansToMeasure(): readonly { readonly name: string; readonly text: string }[] {
  return ['../../examples/', './fixtures/'].flatMap(folder => {
    const root = fileURLToPath(new URL(folder, import.meta.url))
    return readdirSync(root, { recursive: true, encoding: 'utf8' })
      .filter(path => /\.ya?ml$/.test(path))
      .sort()
      .map(path => ({ name: basename(path), text: readFileSync(`${root}${path}`, 'utf8') }))
  })
}

export const papersToMeasure = ['letter', 'a4', 'a5', 'tabloid'] as const
