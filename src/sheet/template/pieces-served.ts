import type { Part, Piece } from '../../model/part.ts'

/** The pieces of a part that one template serves: all of one hand. */
export type Served = { readonly part: Part; readonly pieces: readonly [Piece, ...Piece[]] }

/** The hands of a part, drawn before mirrored. */
export function handsOf(part: Part): readonly Served[] {
  return (['drawn', 'mirrored'] as const).flatMap(hand => {
    const [first, ...others] = part.pieces.filter(piece => piece.hand === hand)
    return first === undefined ? [] : [{ part, pieces: [first, ...others] }]
  })
}

/** "side-frame/2", or "slat/1–8" for several. */
export function pieceName({ part, pieces }: Served): string {
  const first = pieces[0].number
  const last = pieces.at(-1)!.number
  return first === last ? `${part.id}/${first}` : `${part.id}/${first}–${last}`
}

/** "piece 2 of 2, mirrored", "pieces 1–8 of 8". The hand is said only of a part that has two. */
export function piecesInWords({ part, pieces }: Served): string {
  const first = pieces[0].number
  const last = pieces.at(-1)!.number
  const which = first === last ? `piece ${first}` : `pieces ${first}–${last}`
  const twoHands = part.pieces.some(piece => piece.hand === 'mirrored')
  const hand = twoHands ? (pieces[0].hand === 'mirrored' ? ', mirrored' : ', as drawn') : ''
  return `${which} of ${part.pieces.length}${hand}`
}
