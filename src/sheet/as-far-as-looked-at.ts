/** A list that is made as far as it is looked at, and kept so far: of what comes late in it most is never wanted. */
export function asFarAsLookedAt<T>(make: () => Iterator<T>): Iterable<T> {
  const made: T[] = []
  let rest: Iterator<T> | undefined
  return {
    *[Symbol.iterator]() {
      for (let i = 0; ; i++) {
        if (i === made.length) {
          rest ??= make()
          const { done, value } = rest.next()
          if (done === true) return
          made.push(value)
        }
        yield made[i]!
      }
    },
  }
}
