/**
 * Where a value stands in a text: the file's name as the maker gave it, and the offsets of its first character
 * and of the character after its last, counted from 0 in UTF-16 units. `via` is the place that brought it here:
 * the name, formula or library template it came through.
 */
export type Source = {
  readonly file: string
  readonly from: number
  readonly to: number
  readonly via?: Source
}
