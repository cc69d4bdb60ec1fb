import { isSide } from '../../finding/face-name.ts'
import { type BoreFeature, isPlain } from '../../model/feature.ts'
import type { Part, Piece } from '../../model/part.ts'
import type { AskedStrip } from '../sheet.ts'
import { handsOf, type Served } from '../template/pieces-served.ts'
import { type FenceSetting, fenceSettings } from './fence-settings.ts'

/** A strip of paper for one setting of the fence. */
export type Strip = {
  readonly id: string
  readonly served: Served
  readonly hand: Piece['hand']
  readonly setting: FenceSetting
  /** The pieces of the other hand, where they are turned over and bored with the same strip. */
  readonly turned?: readonly Piece[]
  /** Whether all pieces of the part are of this hand. */
  readonly alone: boolean
  /** Whether it is for a single hole, since somebody asked for it. */
  readonly asked: boolean
}

/**
 * The strips of a part, for the drawn pieces before the mirrored ones. A row that goes through needs one strip for
 * both hands: the second piece is turned over so that the same edge meets the fence. Stopped and leaning holes are
 * bored from the same face in both, with the distances from the other end. Common practice, no source.
 *
 * @param only the cut of which alone strips are made, also where it is a single hole
 */
export function stripsOf(part: Part, only?: AskedStrip): readonly Strip[] {
  const wanted = ({ cut }: BoreFeature): boolean => cut === only?.cut
  const hands = handsOf(part).map(served => ({
    served,
    settings: fenceSettings(part, served.pieces[0].solid, wanted),
  }))
  return hands.flatMap(({ served, settings }) => {
    const { hand } = served.pieces[0]
    return settings.flatMap((setting, i): readonly Strip[] => {
      const features = setting.faces.flatMap(({ holes }) => holes.map(({ feature }) => feature))
      if (only !== undefined && !features.some(wanted)) return []
      const others = part.pieces.filter(piece => piece.hand !== hand)
      const turns = others.length > 0 && canBeTurned(features)
      if (turns && hand === 'mirrored') return []
      if (only?.hand !== undefined && !turns && only.hand !== hand) return []
      return [
        {
          id: `${part.id}-strip-${i + 1}${hand === 'mirrored' ? '-mirrored' : ''}`,
          served,
          hand,
          setting,
          ...(turns ? { turned: others } : {}),
          alone: others.length === 0,
          asked: features.length === 1,
        },
      ]
    })
  })
}

/** Whether holes come out the same on the face opposite, square and as wide. */
function canBeTurned(features: readonly BoreFeature[]): boolean {
  return features.every(({ face, shape }) => isSide(face) && shape.depth === 'through' && isPlain(shape))
}
