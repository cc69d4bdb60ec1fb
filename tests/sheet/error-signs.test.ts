import fc from 'fast-check'
import { expect, test } from 'vitest'
import { errorsByPart } from '../../src/app/errors-by-part.ts'
import { check } from '../../src/check/registry.ts'
import { makeSheets } from '../../src/sheet/registry.ts'
import type { Sheet } from '../../src/sheet/sheet.ts'
import { plain } from '../../src/text/words.ts'
import { defaultWorkshop as workshop } from '../../src/workshop/defaults.ts'
import { modelOf } from '../model/model-of.ts'
import { expectClear } from './clear.ts'
import { randomBlock } from './random-block.ts'
import { everyDrawing, fonts, said, textsOf } from './sheets-of.ts'

/** Papers of one kind that know what the check found wrong. */
function checkedSheets(text: string, kind: 'template' | 'mark-out' | 'wrap'): readonly Sheet[] {
  const model = modelOf(text)
  const errors = errorsByPart(check(model, workshop), { unit: model.units, precision: model.precision })
  return makeSheets({ model, workshop, fonts, errors }, [kind])
}

/** Two holes that meet a quarter of a millimetre deep, 20 from the left end and 15 from the bottom. */
const block = `paperjig: 1
title: Winch
units: mm
parts:
  block:
    make: 2
    mirrored: true
    wrap: panels
    size: 90 x 40 x 36
    cuts:
      - { hole: shaft, on: left, at: { bottom: 21.25, front: center }, diameter: 6 }
      - { hole: rod, at: { left: 20, bottom: 15 }, diameter: 7 }
`

const signsOf = ({ marks }: Sheet['drawings'][0]) =>
  textsOf(marks).filter(({ words }) => /^!\d+$/.test(plain(words)))

test('an error inside the wood is marked on the template beside the hole, and its sign is said under the title', () => {
  const [drawn, mirrored] = checkedSheets(block, 'template').map(({ drawings: [drawing] }) => drawing)
  for (const [drawing, x] of [
    [drawn!, 20],
    [mirrored!, 90 - 20],
  ] as const) {
    const [sign, ...others] = signsOf(drawing)
    expect(others).toEqual([])
    expect(Math.hypot(sign!.at.x - x, sign!.at.y - 15)).toBeLessThan(15)
    expect(said(drawing).join(' ')).toContain('marked !1')
  }
})

test('so it is on the views of a mark-out and on the panels of a wrap', () => {
  for (const kind of ['mark-out', 'wrap'] as const) {
    const [sheet] = checkedSheets(block, kind)
    expect(signsOf(sheet!.drawings[0]).length, kind).toBeGreaterThanOrEqual(2)
  }
})

test('a part without errors has no signs', () => {
  const sound = block.replace('bottom: 21.25', 'bottom: 30')
  for (const { drawings } of checkedSheets(sound, 'template')) expect(signsOf(drawings[0])).toEqual([])
})

test.each(['template', 'mark-out', 'wrap'] as const)('signs of a %s touch no lettering and no line', kind => {
  let signs = 0
  fc.assert(
    fc.property(randomBlock, text => {
      for (const sheet of checkedSheets(text, kind)) {
        for (const drawing of everyDrawing(sheet)) {
          expectClear(drawing.marks)
          signs += signsOf(drawing).length
        }
      }
    }),
    // a mark-out has drawings at every standard scale
    { numRuns: kind === 'mark-out' ? 10 : 60 },
  )
  expect(signs).toBeGreaterThan(10)
})
