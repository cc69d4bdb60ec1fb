/**
 * A parsed formula. `from` and `to` are offsets in the written size. A literal with a unit mark is a length in
 * millimetres; a bare number is plain until something beside it says that it is a length.
 */
export type Expression = { readonly from: number; readonly to: number } & (
  | { readonly kind: 'number'; readonly value: number }
  | { readonly kind: 'length'; readonly mm: number }
  | { readonly kind: 'name'; readonly name: string }
  | { readonly kind: 'negative'; readonly of: Expression }
  | {
      readonly kind: 'operation'
      readonly operator: '+' | '-' | '*' | '/'
      readonly left: Expression
      readonly right: Expression
    }
  | { readonly kind: 'call'; readonly name: string; readonly arguments: readonly Expression[] }
)
