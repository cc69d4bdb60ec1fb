/**
 * How a value came to be: written as it stands, scaled off the drawing (or calculated from what was), calculated,
 * or assumed because the plan leaves it out.
 */
export type Basis = 'given' | 'scaled' | 'derived' | 'assumed'

export type KnownLength = { readonly kind: 'length'; readonly mm: number; readonly basis: Basis }

/** The drawing does not give it. `names` are the names whose values are lacking; none when it says so itself. */
export type UnknownValue = { readonly kind: 'unknown'; readonly names: readonly string[] }

/** What a name in a formula stands for. `faulty` has been defined, but its own formula has a fault. */
export type NamedValue =
  | KnownLength
  | { readonly kind: 'angle'; readonly angleDegrees: number; readonly basis: Basis }
  | { readonly kind: 'number'; readonly value: number; readonly basis: Basis }
  | UnknownValue
  | { readonly kind: 'faulty' }

/** The names that a formula may use. Every `ReadonlyMap<string, NamedValue>` is one. */
export type Scope = {
  readonly get: (name: string) => NamedValue | undefined
  readonly keys: () => Iterable<string>
}

export const emptyScope: Scope = { get: () => undefined, keys: () => [] }

/** The names of `inner`, and those of `outer` that it does not have itself. */
export function within(inner: Scope, outer: Scope): Scope {
  return {
    get: name => inner.get(name) ?? outer.get(name),
    keys: function* () {
      yield* inner.keys()
      yield* outer.keys()
    },
  }
}
