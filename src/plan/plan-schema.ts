import { type JsonSchema, jsonSchemaOf } from '../yaml/schema/json-schema.ts'
import { plan1 } from './schema/plan-1.ts'

/**
 * The plan file in JSON Schema, made of the same readers that read it, so that an editor completes what is accepted
 * and marks keys that are not. It says less than the readers do: a size is any text or number, and beside the six
 * sides a position takes every key, since a plan may have words of its own for them.
 */
export function planSchema(): JsonSchema & { readonly $schema: string; readonly title: string } {
  return {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    title: 'Paperjig plan, format version 1',
    ...jsonSchemaOf(plan1),
  }
}
