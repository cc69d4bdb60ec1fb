/** Page numbers in words, runs of them as one: "page 4", "pages 1, 3–6". */
export function pageList(pages: readonly number[]): string {
  const sorted = [...new Set(pages)].sort((a, b) => a - b)
  const runs: { first: number; last: number }[] = []
  for (const page of sorted) {
    const run = runs.at(-1)
    if (run !== undefined && run.last === page - 1) run.last = page
    else runs.push({ first: page, last: page })
  }
  const words = runs.map(({ first, last }) =>
    first === last ? `${first}` : `${first}${last === first + 1 ? ', ' : '–'}${last}`,
  )
  if (words.length === 0) return 'on no page'
  return `${sorted.length === 1 ? 'page' : 'pages'} ${words.join(', ')}`
}
