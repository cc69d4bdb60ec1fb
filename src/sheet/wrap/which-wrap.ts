import { type FaceName, sayFace } from '../../finding/face-name.ts'
import type { Side } from '../../finding/side.ts'
import type { Placed } from '../../model/feature.ts'
import { isPlaced } from '../../model/feature.ts'
import type { Part } from '../../model/part.ts'
import type { SheetContext } from '../sheet.ts'
import { fenceSettings } from '../strip/fence-settings.ts'
import { transferOf } from '../transfer.ts'

/** What paper a part with holes on several faces gets, and why, in half a line. */
export type ChosenWrap = { readonly as: 'panels' | 'net'; readonly because: string }

/** Holes that enter on so many faces are carried over by paper that knows how the faces lie. */
const fewestFaces = 3

/**
 * A wrap where the plan says so, where holes enter on three faces or more, or on two that meet where the one beside
 * the template has holes that no strip serves; a mark-out shows such a face in a view of its own.
 */
export function chooseWrap(part: Part, context: SheetContext): ChosenWrap | undefined {
  const as = part.wrap ?? 'panels'
  const bored = part.drawn.features.filter(isPlaced).filter(({ shape }) => shape.kind === 'bore')
  if (bored.length === 0) return undefined
  if (part.wrap !== undefined) return { as, because: 'the plan says so' }
  const faces = [...new Set(bored.map(({ face }) => face))]
  if (faces.length >= fewestFaces) return { as, because: `holes enter on ${faces.length} faces` }
  if (faces.length < 2 || opposite[faces[0] as Side] === faces[1]) return undefined
  if (transferOf(part, context).by !== 'template') return undefined
  const served = onStrips(part)
  const left = bored.find(feature => feature.face !== 'front' && !served.has(feature.id))
  return left && { as, because: `${nameOf(left)}, on the ${sayFace(left.face)}, is on no strip` }
}

function nameOf({ id, row }: Placed): string {
  return row?.row ?? id
}

/** The ids of all holes that are bored with a strip. */
export function onStrips(part: Part): ReadonlySet<string> {
  return new Set(
    fenceSettings(part, part.drawn).flatMap(({ faces }) =>
      faces.flatMap(({ holes }) => holes.map(({ feature }) => feature.id)),
    ),
  )
}

const opposite: Readonly<Record<Side, FaceName>> = {
  front: 'back',
  back: 'front',
  left: 'right',
  right: 'left',
  top: 'bottom',
  bottom: 'top',
}
