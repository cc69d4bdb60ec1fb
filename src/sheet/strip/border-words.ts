import { isSide, sayFace } from '../../finding/face-name.ts'
import type { Face, Part, Piece } from '../../model/part.ts'
import type { Border } from './fence-frame.ts'

/**
 * What lies at a border, by what it is for and by its name: "face edge (bottom)", "reference end (left)", "back". The
 * ends of a mirrored piece are not called left and right: its left end lies at the right.
 */
export function borderWords(border: Border, part: Part, hand: Piece['hand']): string {
  if (border === 'near-end') return 'end toward the reference end'
  if (border === 'far-end') return 'end away from the reference end'
  const { faceEdge, referenceEnd, sideNames } = part
  const isEnd = border === 'left' || border === 'right'
  const mirroredEnd = isEnd && hand === 'mirrored'
  const own = sideNames[border]
  const names = [...(mirroredEnd ? [] : [border]), ...(own === undefined ? [] : [own])].join(', ')
  const role =
    border === 'front'
      ? 'face side'
      : border === faceEdge
        ? 'face edge'
        : border === referenceEnd
          ? 'reference end'
          : isEnd
            ? 'other end'
            : undefined
  if (role === undefined) return own === undefined ? border : `${border} (${own})`
  return names === '' ? role : `${role} (${names})`
}

/** A face that is bored, as it lies on the table: "face side (front)", "edge foot". */
export function faceWords({ id }: Pick<Face, 'id'>, part: Part, hand: Piece['hand']): string {
  return isSide(id) ? borderWords(id, part, hand) : `edge ${sayFace(id)}`
}
