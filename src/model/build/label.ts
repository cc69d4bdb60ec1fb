/** "side-frame" is shown as "Side frame" where nothing else is given; so is a file of that name. */
export function labelFromId(id: string): string {
  const words = id.replaceAll(/[-_]+/g, ' ').trim()
  return words.charAt(0).toUpperCase() + words.slice(1)
}
