import type { Placed } from '../../model/feature.ts'
import type { KeyEntry } from '../key/key-entry.ts'
import type { KeyLine } from '../key/key-table.ts'
import { elsewhereWords, entryWords, memberNames, missingWords } from '../key/key-words.ts'
import type { SheetContext } from '../sheet.ts'
import { showSize } from '../show-size.ts'
import type { Served } from './pieces-served.ts'

/** Beside a template: what the letters mean, what is not on it and why, and how it is used. */
export function keyLines(
  { part, pieces }: Served,
  key: readonly KeyEntry[],
  elsewhere: readonly Placed[],
  { model }: SheetContext,
): readonly KeyLine[] {
  const solid = pieces[0].solid
  const size = [
    ...showSize(part.length, model),
    ' × ',
    ...showSize(part.width, model),
    ' × ',
    ...showSize(part.thickness, model),
  ]
  const stock = [part.stock, part.wood].filter(s => s !== undefined).join(', ')
  const unplaced = solid.features.flatMap(({ id, shape }) =>
    shape.kind === 'unplaced'
      ? [`Not on this paper: ${shape.what} ${id} wants ${missingWords(shape.missing)}.`]
      : [],
  )
  const remark = (text: string): KeyLine => ({ kind: 'remark', text })
  return [
    ...key.map(
      (entry): KeyLine => ({
        kind: 'entry',
        letter: entry.letter,
        words: entryWords(entry, model),
        names: memberNames(entry),
      }),
    ),
    { kind: 'size', words: [...size, ...(stock === '' ? [] : [`  ${stock}`])] },
    ...(pieces.length > 1 ? [remark(`Print this page ${pieces.length} times, once for each piece.`)] : []),
    ...part.missing.map(m => remark(`Not on this paper: ${missingWords([m])}.`)),
    ...unplaced.map(remark),
    ...(elsewhere.length > 0
      ? [remark(`On other faces, not on this paper: ${elsewhereWords(elsewhere)}.`)]
      : []),
    ...(part.note === undefined ? [] : [remark(part.note)]),
    remark('Loop: face side. V: face edge. Triangle: reference end. Measure from these. Hatched: waste.'),
    remark(
      'The middle of the thin line is the edge. Bore first, while the piece is a rectangle; then saw outside the line and sand to it.',
    ),
  ]
}
