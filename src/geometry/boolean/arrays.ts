/** Several arrays of whole numbers, all 0, in one piece of memory: much cheaper to get than one by one. */
export function int32Arrays<const L extends readonly number[]>(
  ...lengths: L
): { [K in keyof L]: Int32Array } {
  const buffer = new ArrayBuffer(4 * lengths.reduce((sum, n) => sum + n, 0))
  let at = 0
  const arrays = lengths.map(n => {
    const array = new Int32Array(buffer, at, n)
    at += 4 * n
    return array
  })
  return arrays as { [K in keyof L]: Int32Array }
}

/** As `int32Arrays`, for numbers in doubles. */
export function float64Arrays<const L extends readonly number[]>(
  ...lengths: L
): { [K in keyof L]: Float64Array } {
  const buffer = new ArrayBuffer(8 * lengths.reduce((sum, n) => sum + n, 0))
  let at = 0
  const arrays = lengths.map(n => {
    const array = new Float64Array(buffer, at, n)
    at += 8 * n
    return array
  })
  return arrays as { [K in keyof L]: Float64Array }
}
