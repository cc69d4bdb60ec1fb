import { drawnSign } from './drawn-sign.ts'
import { type Extent, extentOf } from './extent.ts'
import { type FontFile, readFontFile } from './font-file.ts'
import { stackFraction, vulgarFraction } from './fraction.ts'
import { drawnGlyph, type Glyph } from './glyph.ts'
import { codeName, codePoints, isSeen } from './shown.ts'

/** A font, ready to set lines with. */
export type Font = {
  /** The files as they were given, for whoever embeds them. */
  readonly files: readonly Uint8Array[]
  /** The height of a capital letter, in ems. */
  readonly capHeight: number
  /** How far letters like p reach below the base line, in ems, positive downward. */
  readonly depth: number
  /** A text letter by letter; what cannot be shown stands there as its code, "[U+4E2D]". */
  readonly spell: (text: string) => Spelled
  /** One number over another. */
  readonly fraction: (over: string, under: string) => Spelled
  /** The blank between a whole number and its fraction, narrower than one between words. */
  readonly thinSpace: Spelled
}

/** Glyphs with the names of the characters among them that had to be shown by their code: "U+4E2D". */
export type Spelled = {
  readonly glyphs: readonly Glyph[]
  readonly missing: readonly string[]
  readonly extent: Extent
}

/**
 * The blank between a whole number and its fraction, as a part of the height of capitals: 0.16 of an em. Below
 * 0.15 some readers of the file take the numbers for one, and 1 3/16 for 13/16.
 */
const thinSpacePart = 0.23

/** Longer texts, such as a maker's note, are set once or twice and need not be kept. */
const longestKept = 100

/**
 * A font from the bytes of its files, WOFF or TrueType. The first one sets the measures; the others are asked
 * in turn for letters that it lacks, and are not read before that.
 *
 * @throws Error when the first file is no font or lacks a letter that every line may need
 */
export function loadFont(files: readonly Uint8Array[]): Font {
  const first = files[0]
  if (first === undefined) throw new Error('a font has at least one file')
  const main = readFontFile(first, 0)
  const opened: FontFile[] = [main]
  const open = (index: number): FontFile => {
    const known = opened[index]
    if (known !== undefined) return known
    const file = readFontFile(files[index]!, index)
    opened[index] = file
    return file
  }

  const known = new Map<number, Glyph | undefined>()
  const glyph = (codePoint: number): Glyph | undefined => {
    if (known.has(codePoint)) return known.get(codePoint)
    const found = find(codePoint)
    known.set(codePoint, found)
    return found
  }
  const find = (codePoint: number): Glyph | undefined => {
    if (!isSeen(codePoint)) return undefined
    // the face's own ⅜ and the like are too small for the shop, where it has them at all
    const vulgar = vulgarFraction(codePoint)
    if (vulgar !== undefined) {
      const [over, under] = [spell(vulgar.over).glyphs, spell(vulgar.under).glyphs]
      return stackFraction(over, under, main, String.fromCodePoint(codePoint))
    }
    for (let i = 0; i < files.length; i++) {
      const found = open(i).glyph(codePoint)
      if (found !== undefined) return found
      const drawn = i === 0 ? drawnSign(codePoint, main) : undefined
      if (drawn !== undefined) return drawn
    }
    return undefined
  }

  const required = (letter: string): Glyph => {
    const found = glyph(letter.codePointAt(0)!)
    if (found === undefined) throw new Error(`the font lacks ${letter}`)
    return found
  }
  const codeLetters = new Map(Array.from('[]+U0123456789ABCDEF', letter => [letter, required(letter)]))

  // the same words are set again and again while a sheet looks for their place
  const spelled = new Map<string, Spelled>()
  const spell = (text: string): Spelled => {
    const ready = spelled.get(text)
    if (ready !== undefined) return ready
    const made = spellAnew(text)
    if (text.length <= longestKept) spelled.set(text, made)
    return made
  }
  const spellAnew = (text: string): Spelled => {
    const missing: string[] = []
    const glyphs: Glyph[] = []
    for (const codePoint of codePoints(text)) {
      const found = glyph(codePoint)
      if (found !== undefined) {
        glyphs.push(found)
        continue
      }
      const name = codeName(codePoint)
      missing.push(name)
      for (const letter of `[${name}]`) glyphs.push(codeLetters.get(letter)!)
    }
    return { glyphs, missing, extent: extentOf(glyphs) }
  }

  const fractions = new Map<string, Spelled>()
  const fraction = (over: string, under: string): Spelled => {
    const key = JSON.stringify([over, under])
    const ready = fractions.get(key)
    if (ready !== undefined) return ready
    const above = spell(over)
    const below = spell(under)
    const glyphs = [stackFraction(above.glyphs, below.glyphs, main)]
    const missing = [...above.missing, ...below.missing]
    const made = { glyphs, missing, extent: extentOf(glyphs) }
    fractions.set(key, made)
    return made
  }

  const thinSpace = [drawnGlyph(' ', thinSpacePart * main.capHeight, [])]
  return {
    files,
    capHeight: main.capHeight,
    depth: -(required('p').ink?.bottom ?? 0),
    spell,
    fraction,
    thinSpace: { glyphs: thinSpace, missing: [], extent: extentOf(thinSpace) },
  }
}
