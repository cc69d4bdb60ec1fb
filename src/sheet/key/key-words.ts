import { type DistanceFrom, type FaceName, isSide, sayFace } from '../../finding/face-name.ts'
import type { Side } from '../../finding/side.ts'
import { nameBit } from '../../length/name-bit.ts'
import { angleText } from '../../length/show-angle.ts'
import { tableTilt } from '../../model/bore/lean.ts'
import type { Bore, Depth, Feature, Missing } from '../../model/feature.ts'
import type { Model, Part, Piece } from '../../model/part.ts'
import type { Words } from '../../text/words.ts'
import { showSize } from '../show-size.ts'
import type { KeyEntry } from './key-entry.ts'

/** What a letter stands for, in the words of the shop: the bit and the depth, or the size. */
export function entryWords({ members }: KeyEntry, model: Model): Words {
  const { shape } = members[0]
  switch (shape.kind) {
    case 'bore':
      return [
        'bore ',
        ...scaledMark(shape.diameter.basis),
        ...nameBit(shape.diameter.mm),
        ...depthWords(shape.depth, model),
        ...mouthWords(shape, model),
        ...leanWords(shape),
      ]
    case 'pocket':
      return [
        shape.depth === 'through' ? 'slot ' : 'mortise ',
        ...showSize(shape.along, model),
        ' × ',
        ...showSize(shape.across, model),
        shape.ends === 'round' ? ', round ends' : '',
        ...depthWords(shape.depth, model),
      ]
    case 'cut-out':
      if (shape.entry === undefined) return ['saw out; no bit of the shop makes an entry hole for the blade']
      return ['saw out, entry hole ', ...nameBit(shape.entry.diameter)]
    case 'edge-cut':
      return ['notch ', ...showSize(shape.along, model), ' along, ', ...showSize(shape.into, model), ' in']
  }
}

function scaledMark(basis: string): Words {
  return basis === 'scaled' ? ['~'] : []
}

function depthWords(depth: Depth, model: Model): Words {
  return depth === 'through' ? [', through'] : [', ', ...showSize(depth, model), ' deep']
}

function mouthWords({ mouth }: Bore, model: Model): Words {
  if (mouth === undefined) return []
  const wide: Words = [`, ${mouth.kind} `, ...nameBit(mouth.diameter.mm)]
  return mouth.kind === 'counterbore'
    ? [...wide, ' ', ...showSize(mouth.depth, model), ' deep']
    : [...wide, ` at ${angleText(mouth.angle)}`]
}

function leanWords(bore: Bore): Words {
  return bore.lean === undefined ? [] : [`, table tilted ${angleText(tableTilt(bore))}`]
}

/** Which features bear the letter: a row by its name and number, not hole by hole. */
export function memberNames({ members }: KeyEntry): string {
  const names = members.map(({ id, row, face }) => {
    const name = row === undefined ? id : `${row.row} (${row.pattern} of ${row.count})`
    return face === 'back' ? `${name}, from the back` : name
  })
  return [...new Set(names)].join(', ')
}

/** What a side is called on a piece. */
export type SideName = (side: Side) => string

/**
 * The sides of a mirrored piece keep their names, but its left end lies at the right: its ends are called by what
 * they are, so that nobody measures from the wrong one. The model's own word for a side stands beside.
 */
export function sideNames(
  hand: Piece['hand'],
  { referenceEnd, sideNames: own }: Pick<Part, 'referenceEnd' | 'sideNames'>,
): SideName {
  return side => {
    const isEnd = side === 'left' || side === 'right'
    const end = side === referenceEnd ? 'the reference end' : 'the other end'
    const name = hand === 'mirrored' && isEnd ? end : side
    return own[side] === undefined ? name : `${name} (${own[side]})`
  }
}

/** What a feature lacks: "a distance from left or right". */
export function missingWords(missing: readonly Missing[], name: SideName): string {
  return missing.map(m => missingWord(m, name)).join(' and ')
}

function missingWord(missing: Missing, name: SideName): string {
  switch (missing.kind) {
    case 'distance':
      return `a distance from ${missing.between.map(from => nameOf(from, name)).join(' or ')}`
    case 'size':
      return `the ${missing.name}`
    case 'place-of':
      return `the place of ${missing.cut}`
    case 'outline':
      return 'an outline that can be sawn'
  }
}

/** A face, or the end of an edge, by what it is called on the piece. */
function nameOf(face: FaceName | DistanceFrom, name: SideName): string {
  if (face === 'start' || face === 'end') return `the ${face} of the edge`
  return isSide(face) ? name(face) : sayFace(face)
}

/** The features of a part that this face of it does not show, by name and face. */
export function elsewhereWords(features: readonly Feature[], name: SideName): string {
  return [...new Set(features.map(({ id, row, face }) => `${row?.row ?? id} on ${nameOf(face, name)}`))].join(
    ', ',
  )
}
