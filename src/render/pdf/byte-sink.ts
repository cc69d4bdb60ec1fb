/** Takes bytes piece by piece and gives them as one. */
export type ByteSink = {
  readonly add: (piece: Uint8Array) => void
  /** All that was added, in its order. */
  readonly bytes: () => Uint8Array
}

const room = 2 ** 16

export function byteSink(): ByteSink {
  let held = new Uint8Array(room)
  let length = 0
  return {
    add: piece => {
      const wanted = length + piece.length
      if (wanted > held.length) {
        const larger = new Uint8Array(Math.max(wanted, 2 * held.length))
        larger.set(held.subarray(0, length))
        held = larger
      }
      held.set(piece, length)
      length = wanted
    },
    bytes: () => held.slice(0, length),
  }
}
