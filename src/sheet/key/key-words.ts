import { type DistanceFrom, type FaceName, isSide, sayFace } from '../../finding/face-name.ts'
import type { Side } from '../../finding/side.ts'
import { quoted } from '../../finding/visible.ts'
import { nameBit } from '../../length/name-bit.ts'
import { angleText } from '../../length/show-angle.ts'
import type { Chamfer, Feature, Missing } from '../../model/feature.ts'
import type { Model, Part, Piece } from '../../model/part.ts'
import type { Size } from '../../model/size.ts'
import { coincident } from '../../number/tolerance.ts'
import type { Words } from '../../text/words.ts'
import type { BitTip } from '../../workshop/workshop.ts'
import { showSize } from '../show-size.ts'
import { boreWords, depthWords, tableWords } from './bore-words.ts'
import type { KeyEntry } from './key-entry.ts'

/** What sides are called on the piece, and what the bits of the shop end in, where the words should say how deep a point goes. */
export type EntryContext = { readonly name?: SideName; readonly bits?: BitTip }

/** What a letter stands for, in the words of the shop: the bit and the depth, or the size. */
export function entryWords({ members }: KeyEntry, model: Model, { name, bits }: EntryContext = {}): Words {
  const { shape, face } = members[0]
  switch (shape.kind) {
    case 'bore':
      return boreWords(shape, {
        model,
        sideName: side => towardName(side, name),
        ...(bits ? { bits } : {}),
        behind: face === 'back',
      })
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
    case 'groove':
    case 'rebate':
      return [
        `${shape.stopped ? 'stopped ' : ''}${shape.kind} `,
        ...showSize(shape.width, model),
        ' wide, ',
        ...showSize(shape.depth, model),
        ' deep',
      ]
    case 'bevel':
      return [
        `bevel ${angleText(shape.angle)}, blade tilted ${angleText(shape.angle)}, ${face} `,
        ...showSize(shape.shorter, model),
        ' shorter',
      ]
    case 'chamfer':
      return chamferWords(shape, model)
    case 'round-over':
      return ['round over, radius ', ...showSize(shape.radius, model)]
    case 'engraved-lines':
      return ['engrave the lines', ...engravedDepth(shape.depth, model)]
    case 'engraved-text':
      return [
        'engrave ',
        quoted(shape.text),
        ', ',
        ...showSize(shape.height, model),
        ' high',
        ...engravedDepth(shape.depth, model),
      ]
  }
}

/** How the drill press is set, where that has to be said. */
export function setUpWords({ members: [{ shape }] }: KeyEntry, name?: SideName): string | undefined {
  return shape.kind === 'bore' ? tableWords(shape, { sideName: side => towardName(side, name) }) : undefined
}

function chamferWords({ width, depth }: Chamfer, model: Model): Words {
  const one = ['chamfer ', ...showSize(width, model)]
  if (Math.abs(width.mm - depth.mm) <= coincident) return one
  return [...one, ' wide, ', ...showSize(depth, model), ' down the edge']
}

function engravedDepth(depth: Size | undefined, model: Model): Words {
  return depth === undefined ? [] : [', ', ...showSize(depth, model), ' deep']
}

/** A side as a direction: "the right", "the reference end". */
function towardName(side: DistanceFrom, name: SideName = side => side): string {
  const word = nameOf(side, name)
  return word.startsWith('the ') ? word : `the ${word}`
}

/** Which features bear the letter: a row by its name and number, not hole by hole. */
export function memberNames({ members }: KeyEntry): string {
  const names = members.map(({ id, row, face, shape }) => {
    const name = row === undefined ? id : `${row.row} (${row.pattern} of ${row.count})`
    return face === 'back' && shape.kind === 'bore' ? `${name}, from the back` : name
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
