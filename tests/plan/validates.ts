import type { JsonSchema } from '../../src/yaml/schema/json-schema.ts'

/**
 * Whether a value is valid by a schema: the keywords that the plan's schema uses, as the standard has them, each by
 * itself. A keyword that is not listed here is an error, so that none goes unchecked.
 *
 * Source: JSON Schema draft 2020-12, Validation, sections 6.1 to 6.5, and Core, section 10.2 and 10.3.
 */
export function validates(schema: JsonSchema, value: unknown): boolean {
  return Object.entries(schema).every(([keyword, wanted]) => {
    const holds = keywords[keyword as keyof JsonSchema | '$schema' | 'title']
    if (holds === undefined) throw new Error(`unknown keyword ${keyword}`)
    return holds(wanted as never, value, schema)
  })
}

type Keyword = (wanted: never, value: unknown, schema: JsonSchema) => boolean

const keywords: { readonly [K in keyof JsonSchema | '$schema' | 'title']-?: Keyword } = {
  $schema: () => true,
  title: () => true,
  description: () => true,
  type: (wanted: string | readonly string[], value) => [wanted].flat().some(type => isOf(type, value)),
  enum: (wanted: readonly unknown[], value) => wanted.includes(value),
  const: (wanted: unknown, value) => value === wanted,
  pattern: (wanted: string, value) => typeof value !== 'string' || new RegExp(wanted, 'u').test(value),
  minimum: (wanted: number, value) => typeof value !== 'number' || value >= wanted,
  maximum: (wanted: number, value) => typeof value !== 'number' || value <= wanted,
  maxLength: (wanted: number, value) => typeof value !== 'string' || [...value].length <= wanted,
  items: (wanted: JsonSchema, value) => !Array.isArray(value) || value.every(item => validates(wanted, item)),
  minItems: (wanted: number, value) => !Array.isArray(value) || value.length >= wanted,
  maxItems: (wanted: number, value) => !Array.isArray(value) || value.length <= wanted,
  properties: (wanted: Readonly<Record<string, JsonSchema>>, value) =>
    !isObject(value) ||
    Object.entries(wanted).every(
      ([key, schema]) => !Object.hasOwn(value, key) || validates(schema, value[key]),
    ),
  required: (wanted: readonly string[], value) =>
    !isObject(value) || wanted.every(key => Object.hasOwn(value, key)),
  additionalProperties: (wanted: boolean | JsonSchema, value, { properties = {} }) =>
    !isObject(value) ||
    Object.entries(value)
      .filter(([key]) => !Object.hasOwn(properties, key))
      .every(([, child]) => (typeof wanted === 'boolean' ? wanted : validates(wanted, child))),
  maxProperties: (wanted: number, value) => !isObject(value) || Object.keys(value).length <= wanted,
  anyOf: (wanted: readonly JsonSchema[], value) => wanted.some(schema => validates(schema, value)),
}

function isOf(type: string, value: unknown): boolean {
  switch (type) {
    case 'null':
      return value === null
    case 'array':
      return Array.isArray(value)
    case 'object':
      return isObject(value)
    case 'integer':
      return Number.isInteger(value)
    default:
      return typeof value === type
  }
}

function isObject(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
}
