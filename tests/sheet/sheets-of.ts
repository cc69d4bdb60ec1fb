import type { Drawing } from '../../src/drawing/drawing.ts'
import type { Mark, Text } from '../../src/drawing/mark.ts'
import type { Segment } from '../../src/geometry/shape/segment.ts'
import type { Model } from '../../src/model/part.ts'
import { makeSheets } from '../../src/sheet/registry.ts'
import type { Sheet } from '../../src/sheet/sheet.ts'
import { plain } from '../../src/text/words.ts'
import { defaultWorkshop } from '../../src/workshop/defaults.ts'
import { modelOf } from '../model/model-of.ts'
import { bundledFonts } from '../text/bundled-font.ts'

export const fonts = bundledFonts()

/** Templates of all parts of a plan text that has no fault, whatever suits them. */
export function sheetsOf(text: string): readonly Sheet[] {
  return makeSheets({ model: modelOf(text), workshop: defaultWorkshop, fonts }, ['template'])
}

/** Mark-outs of all parts, whatever suits them; `change` makes the model another one first. */
export function markOutsOf(text: string, change: (model: Model) => Model = model => model): readonly Sheet[] {
  return makeSheets({ model: change(modelOf(text)), workshop: defaultWorkshop, fonts }, ['mark-out'])
}

/** All that a mark-out may be printed as. */
export function everyDrawing({ drawings, otherwise = [] }: Sheet): readonly Drawing[] {
  return [{ drawings }, ...otherwise].flatMap(one => [
    ...one.drawings,
    ...('beside' in one ? (one.beside ?? []).flat() : []),
  ])
}

/** The strips, or the wraps, of all parts. */
export function papersOf(text: string, kind: 'strip' | 'wrap'): readonly Sheet[] {
  return makeSheets({ model: modelOf(text), workshop: defaultWorkshop, fonts }, [kind])
}

/** The first arrangement of a plan's first sheet. */
export function firstDrawing(text: string): Drawing {
  return sheetsOf(text)[0]!.drawings[0]
}

export function textsOf(marks: readonly Mark[]): readonly (Text & Mark)[] {
  return marks.flatMap(m => (m.kind === 'text' ? [m] : []))
}

/** What a drawing says, line by line. */
export function said({ marks }: Pick<Drawing, 'marks'>): readonly string[] {
  return textsOf(marks).map(m => plain(m.words))
}

/** The words of a drawing's key as one text, wherever its lines are broken. */
export function keyText(drawing: Drawing): string {
  return said({ marks: drawing.marks.filter(m => m.subject === 'key') }).join(' ')
}

export function segmentsOf(marks: readonly Mark[]): readonly Segment[] {
  return marks.flatMap(m => (m.kind === 'path' ? m.contours.flatMap(c => c.segments) : []))
}
