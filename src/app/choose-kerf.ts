import type { Unit } from '../length/unit.ts'
import { chooseLength } from './choose-length.ts'
import type { SvgChoices } from './inputs.ts'

/** No beam or cutter that follows a line is wider, in millimetres. */
const widestKerf = 10

/** The kerf asked for, none unless it is; a bare number that was typed is in the plan's units. */
export function chooseKerf(kerf: SvgChoices['kerf'], unit: Unit): ReturnType<typeof chooseLength> {
  if (typeof kerf !== 'string') return { mm: kerf ?? 0 }
  return chooseLength(kerf, { name: 'kerf', least: 0, most: widestKerf, unit })
}
