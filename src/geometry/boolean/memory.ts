/**
 * Memory that booleans work in, one after the other; what they give does not refer to it. It holds half a megabyte at
 * most. Who makes many booleans and keeps one spares the system finding new memory for each, which for shapes of a few
 * hundred segments can take as long as the boolean.
 *
 * Small arrays are cut from a shared piece, since an array with memory of its own costs as much as working on dozens
 * of segments; large ones get their own. Within a run no array is given out twice, and all begin with zeros.
 */
export type Memory = { piece: ArrayBuffer; used: number }

/** How many bytes a run takes for each segment, about. */
const bytesEach = 192
/** From this size on it does not pay to share. */
const largest = 1 << 19
/** Of a piece, the share that one array may take. */
const greatShare = 1 / 4
/** Where arrays begin, so that numbers of every kind may stand there. */
const alignment = 8

/** Memory for any number of booleans, but not for one while another is at work in it. */
export function createMemory(): Memory {
  return { piece: new ArrayBuffer(0), used: 0 }
}

/** Begins a run with so many segments. The arrays of the last run stand in the same places: it must have ended. */
export function beginRun(memory: Memory, segments: number): void {
  const bytes = Math.min(largest, bytesEach * (segments + 8))
  if (memory.piece.byteLength < bytes) memory.piece = new ArrayBuffer(bytes)
  else new Uint8Array(memory.piece, 0, memory.used).fill(0)
  memory.used = 0
}

export function int32Array(memory: Memory, length: number): Int32Array {
  const bytes = 4 * length
  if (isGreat(memory, bytes)) return new Int32Array(length)
  makeRoom(memory, bytes)
  return new Int32Array(memory.piece, take(memory, bytes), length)
}

export function float64Array(memory: Memory, length: number): Float64Array {
  const bytes = 8 * length
  if (isGreat(memory, bytes)) return new Float64Array(length)
  makeRoom(memory, bytes)
  return new Float64Array(memory.piece, take(memory, bytes), length)
}

export function int8Array(memory: Memory, length: number): Int8Array {
  if (isGreat(memory, length)) return new Int8Array(length)
  makeRoom(memory, length)
  return new Int8Array(memory.piece, take(memory, length), length)
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

function isGreat({ piece }: Memory, bytes: number): boolean {
  return bytes > greatShare * piece.byteLength
}

/** Begins a new piece where the present one has not so many bytes left. */
function makeRoom(memory: Memory, bytes: number): void {
  const { byteLength } = memory.piece
  if (memory.used + bytes <= byteLength) return
  memory.piece = new ArrayBuffer(byteLength)
  memory.used = 0
}

function take(memory: Memory, bytes: number): number {
  const at = memory.used
  memory.used = at + Math.ceil(bytes / alignment) * alignment
  return at
}
