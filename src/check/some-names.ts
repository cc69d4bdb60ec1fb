/** More names than these in one sentence help nobody. */
const mostNames = 12

/** `axle, hinge and 3 more`: names in a sentence, each once. */
export function someNames(names: readonly string[]): string {
  const each = [...new Set(names)]
  const named = each.slice(0, mostNames)
  const more = each.length - named.length
  return [...named, ...(more > 0 ? [`and ${more} more`] : [])].join(', ')
}
