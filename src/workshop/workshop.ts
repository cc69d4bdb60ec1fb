/** What the maker's own shop is like, in millimetres. Every figure is a default that a workshop file can change. */
export type Workshop = {
  /** How far outside the cut line the paper is cut off, and the wood left for the sander to take. */
  readonly sanding: {
    /** For a part whose longest side is shorter than `smallBelow`. */
    readonly small: number
    readonly large: number
    readonly smallBelow: number
  }
  readonly printer: {
    /** The edges that the printer cannot reach. */
    readonly margin: {
      readonly left: number
      readonly right: number
      readonly top: number
      readonly bottom: number
    }
  }
}
