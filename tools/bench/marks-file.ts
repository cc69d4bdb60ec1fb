import { writeFileSync } from 'node:fs'
import type { FontBytes } from '../../src/app/inputs.ts'
import type { BarePage } from './marks.ts'

/**
 * Writes pages for `floor.mjs`, with the fonts beside them; these unpacked, as print has them, so that the floor is not
 * slowed down by unpacking them with a library of its own.
 */
export function writeMarks(
  folder: string,
  name: string,
  pages: readonly BarePage[],
  bytes: FontBytes,
): string {
  const font = (weight: keyof FontBytes): string => {
    const file = `${folder}/${weight}.ttf`
    writeFileSync(file, bytes[weight][0]!)
    return file
  }
  const path = `${folder}/${name}.json`
  writeFileSync(path, JSON.stringify({ fonts: { regular: font('regular'), bold: font('bold') }, pages }))
  return path
}
