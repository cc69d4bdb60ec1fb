import { nameBit } from '../../length/name-bit.ts'
import type { Depth, Feature, Missing } from '../../model/feature.ts'
import type { Model } from '../../model/part.ts'
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

/** Which features bear the letter: a row by its name and number, not hole by hole. */
export function memberNames({ members }: KeyEntry): string {
  const names = members.map(({ id, row }) => (row === undefined ? id : `${row.row} (row of ${row.count})`))
  return [...new Set(names)].join(', ')
}

/** What a feature lacks: "a distance from left or right". */
export function missingWords(missing: readonly Missing[]): string {
  return missing
    .map(m => (m.kind === 'distance' ? `a distance from ${m.between.join(' or ')}` : `the ${m.name}`))
    .join(' and ')
}

/** The features of a part that this face of it does not show, by name and face. */
export function elsewhereWords(features: readonly Feature[]): string {
  return [...new Set(features.map(({ id, row, face }) => `${row?.row ?? id} on ${face}`))].join(', ')
}
