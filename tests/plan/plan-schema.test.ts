import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { parse } from 'yaml'
import { planSchema } from '../../src/plan/plan-schema.ts'
import { readPlan } from '../../src/plan/read-plan.ts'
import { everyKey } from './every-key.ts'
import { validates } from './validates.ts'

const schema = planSchema()
const accepts = (text: string) => validates(schema, parse(text))

const folders = [new URL('fixtures/plans/', import.meta.url), new URL('../../examples/', import.meta.url)]
const plans = folders.flatMap(folder =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter(name => name.endsWith('.yaml'))
    .map(name => [name, readFileSync(new URL(name, folder), 'utf8')] as const),
)

describe('the schema for editors', () => {
  it.each(plans)('accepts %s, as the reader does', (_, text) => {
    expect(readPlan(text, 'plan.yaml').findings.filter(f => f.severity === 'error')).toEqual([])
    expect(accepts(text)).toBe(true)
  })

  it('accepts a plan that uses every key', () => {
    expect(readPlan(everyKey, 'plan.yaml').findings).toEqual([])
    expect(accepts(everyKey)).toBe(true)
  })

  it('says of every key what belongs there', () => {
    for (const { path, node } of objectsIn(planSchema())) {
      for (const [key, value] of Object.entries(node.properties ?? {})) {
        expect(value.description, `${path} ${key}`).toBeTruthy()
      }
    }
  })

  it('refuses an unknown key wherever the reader does', () => {
    const plan = parse(everyKey)
    let tried = 0
    for (const { path, mapping } of mappingsIn(plan, [])) {
      // a position may have the plan's own words for sides, and under these keys the names are the maker's
      if (['at', 'last', 'stopped'].includes(path.at(-1) ?? '')) continue
      if (['let', 'stock', 'pins', 'parts'].includes(path.at(-1) ?? '') && path.length === 1) continue
      mapping.bogus = 1
      expect(validates(schema, plan), path.join('.')).toBe(false)
      delete mapping.bogus
      tried += 1
    }
    expect(tried).toBeGreaterThan(25)
    expect(validates(schema, plan)).toBe(true)
  })

  it('refuses what is no part at all', () => {
    expect(accepts('paperjig: 1\ntitle: Pier\nunits: mm\nparts: { plank: {} }\n')).toBe(false)
    expect(accepts('paperjig: 2\ntitle: Pier\nunits: mm\nparts: { plank: { size: 1 x 2 x 3 } }\n')).toBe(
      false,
    )
    expect(accepts('paperjig: 1\ntitle: Pier\nunits: cubit\nparts: { plank: { size: 1 x 2 x 3 } }\n')).toBe(
      false,
    )
  })
})

type Schema = ReturnType<typeof planSchema>

function* objectsIn(
  node: Schema | NonNullable<Schema['items']>,
  path = '',
): Generator<{
  readonly path: string
  readonly node: NonNullable<Schema['items']>
}> {
  if (node.properties) yield { path, node }
  for (const [key, child] of Object.entries(node.properties ?? {})) yield* objectsIn(child, `${path}.${key}`)
  for (const child of [...(node.anyOf ?? []), ...(node.items ? [node.items] : [])])
    yield* objectsIn(child, path)
  if (typeof node.additionalProperties === 'object') yield* objectsIn(node.additionalProperties, `${path}.*`)
}

function* mappingsIn(
  value: unknown,
  path: readonly string[],
): Generator<{ readonly path: readonly string[]; readonly mapping: Record<string, unknown> }> {
  if (typeof value !== 'object' || value === null) return
  if (!Array.isArray(value)) yield { path, mapping: value as Record<string, unknown> }
  for (const [key, child] of Object.entries(value)) yield* mappingsIn(child, [...path, key])
}
