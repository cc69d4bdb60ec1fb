import type { FindingOf } from '../finding/finding.ts'
import { nearestName } from '../length/nearest-name.ts'
import { type SheetKind, sheetKinds } from '../sheet/registry.ts'

/** Everything that a packet can hold, in the order in which it is bound. */
export const printableSheets = ['cover', ...sheetKinds] as const

/** The kinds of sheet that are asked for, all unless something is; and what was asked for and is none. */
export function chooseSheets(wanted: readonly string[] | undefined): {
  readonly cover: boolean
  readonly makers: readonly SheetKind[]
  readonly findings: readonly FindingOf<'unknown-sheet'>[]
} {
  if (wanted === undefined) return { cover: true, makers: sheetKinds, findings: [] }
  const unknown = [...new Set(wanted)].filter(kind => !printableSheets.some(known => known === kind))
  return {
    cover: wanted.includes('cover'),
    makers: sheetKinds.filter(kind => wanted.includes(kind)),
    findings: unknown.map((found): FindingOf<'unknown-sheet'> => {
      const nearest = nearestName(found, printableSheets)
      return {
        rule: 'unknown-sheet',
        severity: 'error',
        places: [],
        facts: {
          found,
          allowed: printableSheets.join(', '),
          ...(nearest === undefined ? {} : { nearest }),
        },
      }
    }),
  }
}
