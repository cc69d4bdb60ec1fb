/** "side-frame" is shown as "Side frame" where the plan gives no label. */
export function labelFromId(id: string): string {
  const words = id.replaceAll('-', ' ')
  return words.charAt(0).toUpperCase() + words.slice(1)
}
