/** What a function makes, made when it is first asked for and kept. */
export function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined
  return () => {
    made ??= { value: make() }
    return made.value
  }
}

/** What a function makes of each key, made when it is first asked for and kept. */
export function onceForEach<K, T>(make: (key: K) => T): (key: K) => T {
  const made = new Map<K, () => T>()
  return key => {
    const known = made.get(key) ?? once(() => make(key))
    made.set(key, known)
    return known()
  }
}
