import { longestDecimal, putDecimal } from '../../number/write-decimal.ts'

const room = 2 ** 16
const newline = 10

/** Takes bytes piece by piece and gives them as one. Most of a file is numbers: as texts, they would take twice the time. */
export class ByteSink {
  private held = new Uint8Array(room)
  private end = 0

  get length(): number {
    return this.end
  }

  add(piece: Uint8Array): void {
    this.makeRoom(piece.length)
    this.held.set(piece, this.end)
    this.end += piece.length
  }

  /** Each letter is the byte of its code. */
  addLetters(piece: string): void {
    this.makeRoom(piece.length)
    const { held, end } = this
    for (let i = 0; i < piece.length; i++) held[end + i] = piece.charCodeAt(i)
    this.end = end + piece.length
  }

  /** Letters, and the end of their line. */
  addLine(piece: string): void {
    this.addLetters(piece)
    this.makeRoom(1)
    this.held[this.end++] = newline
  }

  /** A number as the decimal writer has it. */
  addDecimal(value: number, places: number): void {
    this.makeRoom(longestDecimal)
    this.end = putDecimal(value, places, this.held, this.end)
  }

  /** All that was added, in its order. */
  bytes(): Uint8Array {
    return this.held.slice(0, this.end)
  }

  /** Forgets what was added, and keeps the room. */
  clear(): void {
    this.end = 0
  }

  private makeRoom(by: number): void {
    if (this.end + by <= this.held.length) return
    const larger = new Uint8Array(Math.max(this.end + by, 2 * this.held.length))
    larger.set(this.held.subarray(0, this.end))
    this.held = larger
  }
}
