import type { z } from 'zod'

/** The part of JSON Schema (draft 2020-12) that describes a plan file. */
export type JsonSchema = {
  readonly type?: JsonType | readonly JsonType[]
  readonly description?: string
  readonly enum?: readonly (string | number | boolean)[]
  readonly const?: string | number
  readonly pattern?: string
  readonly minimum?: number
  readonly maximum?: number
  readonly maxLength?: number
  readonly items?: JsonSchema
  readonly minItems?: number
  readonly maxItems?: number
  readonly properties?: Readonly<Record<string, JsonSchema>>
  readonly required?: readonly string[]
  readonly additionalProperties?: boolean | JsonSchema
  readonly maxProperties?: number
  readonly anyOf?: readonly JsonSchema[]
}

type JsonType = 'string' | 'number' | 'integer' | 'boolean' | 'null' | 'object' | 'array'

/** What may stand where a reader reads. Every reader of this folder carries it. */
export function jsonSchemaOf(type: z.ZodType): JsonSchema {
  const inner = 'unwrap' in type ? (type.unwrap as () => z.ZodType)() : type
  const { json, description } = inner.meta() ?? {}
  if (json === undefined) throw new TypeError('a reader without its schema')
  return description === undefined ? (json as JsonSchema) : { ...(json as JsonSchema), description }
}
