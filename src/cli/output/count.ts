/** `1 page`, `3 pages` */
export function count(n: number, what: string): string {
  return `${n} ${what}${n === 1 ? '' : 's'}`
}
