import { legible } from '../text/shown.ts'

const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
}

/**
 * Any text as XML, in an element or an attribute: markup is escaped, and characters that XML forbids or a
 * viewer would hide are written as their codes.
 */
export function xmlText(text: string): string {
  return legible(text).replace(/[&<>"']/g, c => entities[c]!)
}
