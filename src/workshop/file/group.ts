import type { z } from 'zod'
import { mapping } from '../../yaml/schema/mapping.ts'
import { optional } from '../../yaml/schema/reader.ts'
import type { Setting, Update, Written } from './setting.ts'

/** A setting under its key, and what is said about it in the file that is written. */
export type Entry<T> = { readonly key: string; readonly setting: Setting<T>; readonly comment?: string }

/** An entry for every field of the group. */
export type Entries<T> = { readonly [K in keyof T]: Entry<T[K]> }

/**
 * A group of settings by their keys; one that is left out stays as it was. `others` are keys that stand in the file
 * and are no settings.
 */
export function group<T extends object>(
  naming: { readonly name: string; readonly example: string },
  entries: Entries<T>,
  others: Readonly<Record<string, z.ZodType>> = {},
): Setting<T> {
  type Field = keyof T & string
  const fields = Object.entries(entries) as [Field, Entry<T[Field]>][]
  return {
    reader: unit => {
      const shape: Record<string, z.ZodType> = { ...others }
      for (const [, { key, setting }] of fields) shape[key] = optional(setting.reader(unit))
      return mapping<typeof shape, Update<T>>(naming, shape, values => {
        const updates = values as Readonly<Record<string, Update<T[Field]> | undefined>>
        return before => {
          const after = { ...before }
          for (const [field, { key }] of fields) {
            const update = updates[key]
            if (update) after[field] = update(before[field])
          }
          return after
        }
      })
    },
    write: (group, unit) => {
      const lines: string[] = []
      let afterBlock = false
      for (const [field, { key, setting, comment }] of fields) {
        const written = setting.write(group[field], unit)
        const apart = afterBlock && typeof written === 'string'
        lines.push(...(apart ? [''] : []), ...entryText(key, written, comment))
        afterBlock = typeof written !== 'string'
      }
      return lines
    },
  }
}

/** Where the remarks behind the values begin, so that they stand below each other. */
const remarkColumn = 26

function entryText(key: string, written: Written, comment: string | undefined): readonly string[] {
  if (typeof written === 'string') {
    const line = `${key}: ${written}`
    return [comment === undefined ? line : `${line.padEnd(remarkColumn - 1)} # ${comment}`]
  }
  const above = comment === undefined ? [] : ['', ...comment.split('\n').map(text => `# ${text}`)]
  return [...above, `${key}:`, ...written.map(line => (line === '' ? line : `  ${line}`))]
}
