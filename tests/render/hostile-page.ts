import type { Page } from '../../src/drawing/page.ts'
import { identity } from '../../src/geometry/shape/matrix.ts'
import { point } from '../../src/geometry/shape/point.ts'
import { bracket, text } from './sample-page.ts'

/** Labels as a plan file could bring them, and what a page shows of them. */
export const hostileLabels: readonly (readonly [written: string, shown: string])[] = [
  ['</title></svg><script>alert(1)</script>', '</title></svg><script>alert(1)</script>'],
  ['&lt;b&gt; & "quoted" \'single\' ]]>', '&lt;b&gt; & "quoted" \'single\' ]]>'],
  [') Tj ET Q (', ') Tj ET Q ('],
  ['<</JS (app.alert)>> endstream endobj', '<</JS (app.alert)>> endstream endobj'],
  ['a\u0000b\u0007c\u001b[31m\r\n\t', 'a[U+0000]b[U+0007]c[U+001B][31m[U+000D][U+000A][U+0009]'],
  ['\u202Egnorw\u202C \u2067right\u2069', '[U+202E]gnorw[U+202C] [U+2067]right[U+2069]'],
  ['שלום', '[U+05E9][U+05DC][U+05D5][U+05DD]'],
  ['مرحبا', '[U+0645][U+0631][U+062D][U+0628][U+0627]'],
  ['🪚🔨', '[U+1FA9A][U+1F528]'],
  ['\uFFFE\uFFFF\uD800x', '[U+FFFE][U+FFFF][U+D800]x'],
  ['%PDF-1.7 \\n \\101 \\', '%PDF-1.7 \\n \\101 \\'],
]

export function hostilePage(): Page {
  const everything = hostileLabels.map(([written]) => written).join(' ')
  return {
    paper: { name: 'a4', width: 210, height: 297 },
    number: 1,
    correction: identity,
    placed: [
      {
        drawing: {
          ...bracket(),
          id: everything,
          caption: { plan: everything, sheet: everything, part: everything },
          marks: bracket().marks.map(mark => ({ ...mark, subject: everything })),
        },
        matrix: identity,
      },
    ],
    furniture: hostileLabels.map(([written], i) => text([written], point(10, 280 - 10 * i), 3.5)),
  }
}
