import type { Expression } from './expression.ts'

/**
 * A size as it was written, parsed and not yet calculated. `scaled`: a leading `~` says that it was taken off
 * the paper drawing and not given on it. `unknown`: the drawing does not give it.
 */
export type WrittenSize =
  | {
      readonly kind: 'size'
      readonly written: string
      readonly scaled: boolean
      readonly expression: Expression
    }
  | { readonly kind: 'unknown'; readonly written: string }
