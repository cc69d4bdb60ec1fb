/**
 * Memory that booleans and offsets work in, one after the other; what they give does not refer to it. Who makes many and
 * keeps one spares the system finding new memory for each, which can take as long as the work itself. It grows to what
 * the largest of them took, some two to four hundred bytes for each edge, and is let go of with whoever keeps it.
 *
 * Arrays are cut from a shared piece, since a small one with memory of its own costs as much as working on dozens of
 * segments. What a run takes beyond the piece it finds elsewhere, and the next run a piece that is large enough. Within
 * a run no array is given out twice, and all begin with zeros.
 */
export type Memory = {
  piece: ArrayBuffer
  used: number
  /** What this run has taken so far, or the last one in all, in bytes. */
  taken: number
}

/** A first run takes no more at once, for what it will take is not known. */
const firstPiece = 1 << 19
/** Of a piece, the share from which on an array that finds no room there gets memory of its own. */
const greatShare = 1 / 4
/** Where arrays begin, so that numbers of every kind may stand there. */
const alignment = 8

/** Memory for any number of booleans and offsets, but not for one while another is at work in it. */
export function createMemory(): Memory {
  return { piece: new ArrayBuffer(0), used: 0, taken: 0 }
}

/** Begins a run that will take about so many bytes. The arrays of the last run stand in the same places: it must have ended. */
export function beginRun(memory: Memory, bytes: number): void {
  const wanted = Math.max(memory.taken, Math.min(firstPiece, bytes))
  if (memory.piece.byteLength < wanted) memory.piece = new ArrayBuffer(wanted)
  else new Uint8Array(memory.piece, 0, memory.used).fill(0)
  memory.used = 0
  memory.taken = 0
}

export function int32Array(memory: Memory, length: number): Int32Array {
  const at = take(memory, 4 * length)
  return at < 0 ? new Int32Array(length) : new Int32Array(memory.piece, at, length)
}

export function float64Array(memory: Memory, length: number): Float64Array {
  const at = take(memory, 8 * length)
  return at < 0 ? new Float64Array(length) : new Float64Array(memory.piece, at, length)
}

export function int8Array(memory: Memory, length: number): Int8Array {
  const at = take(memory, length)
  return at < 0 ? new Int8Array(length) : new Int8Array(memory.piece, at, length)
}

/** Where in the piece so many bytes may stand; −1 for a great array that finds no room there. */
function take(memory: Memory, bytes: number): number {
  const whole = Math.ceil(bytes / alignment) * alignment
  memory.taken += whole
  const { byteLength } = memory.piece
  if (memory.used + whole > byteLength) {
    if (whole > greatShare * byteLength) return -1
    memory.piece = new ArrayBuffer(byteLength)
    memory.used = 0
  }
  const at = memory.used
  memory.used += whole
  return at
}

/**
 * Makes of how many things there are of each kind where, in a list by kind, those of a kind end. Filled from the
 * last thing to the first, a place before the end each time, these become where they begin.
 */
export function endsOf(counts: Int32Array): void {
  let end = 0
  for (let k = 0; k < counts.length; k++) {
    end += counts[k]!
    counts[k] = end
  }
}
