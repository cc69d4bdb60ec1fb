/** Takes bytes piece by piece and gives them as one. */
export type ByteSink = {
  readonly add: (piece: Uint8Array) => void
  /** Each letter is the byte of its code. */
  readonly addLetters: (piece: string) => void
  readonly length: () => number
  /** All that was added, in its order. */
  readonly bytes: () => Uint8Array
}

const room = 2 ** 16

export function byteSink(): ByteSink {
  let held = new Uint8Array(room)
  let length = 0
  /** Makes room for so many more bytes, and says where they begin. */
  const grow = (by: number): number => {
    const from = length
    length += by
    if (length > held.length) {
      const larger = new Uint8Array(Math.max(length, 2 * held.length))
      larger.set(held.subarray(0, from))
      held = larger
    }
    return from
  }
  return {
    add: piece => {
      const from = grow(piece.length)
      held.set(piece, from)
    },
    addLetters: piece => {
      const from = grow(piece.length)
      for (let i = 0; i < piece.length; i++) held[from + i] = piece.charCodeAt(i)
    },
    length: () => length,
    bytes: () => held.slice(0, length),
  }
}
