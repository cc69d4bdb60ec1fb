/**
 * A parsed formula. `from` and `to` are offsets in the written size. A literal with a unit mark is a length in
 * millimetres or an angle in degrees; a bare number is plain until something beside it says what it measures.
 */
export type Expression = { readonly from: number; readonly to: number } & (
  | { readonly kind: 'number'; readonly value: number }
  | { readonly kind: 'length'; readonly mm: number }
  | { readonly kind: 'angle'; readonly angleDegrees: number }
  | { readonly kind: 'name'; readonly name: string }
  | { readonly kind: 'negative'; readonly of: Expression }
  | {
      readonly kind: 'operation'
      readonly operator: Operator
      readonly left: Expression
      readonly right: Expression
    }
  | { readonly kind: 'call'; readonly name: FunctionName; readonly arguments: readonly Expression[] }
)

export type Operator = '+' | '-' | '*' | '/'

/** The functions a formula may call, with the fewest and the most values each of them takes. */
export const functions = {
  min: { fewest: 1, most: 100 },
  max: { fewest: 1, most: 100 },
  sqrt: { fewest: 1, most: 1 },
  sin: { fewest: 1, most: 1 },
  cos: { fewest: 1, most: 1 },
  tan: { fewest: 1, most: 1 },
  round: { fewest: 2, most: 2 },
} as const

export type FunctionName = keyof typeof functions

export const functionNames = Object.keys(functions) as readonly FunctionName[]

export function isFunctionName(word: string): word is FunctionName {
  return Object.hasOwn(functions, word)
}
