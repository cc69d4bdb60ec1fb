import fc from 'fast-check'
import { expect, test } from 'vitest'
import type { Drawing } from '../../../src/drawing/drawing.ts'
import { textBox } from '../../../src/drawing/text-box.ts'
import { pointInRegion } from '../../../src/geometry/measure/inside.ts'
import { blockOf } from '../../../src/sheet/wrap/block.ts'
import { netOf, onPaper } from '../../../src/sheet/wrap/net.ts'
import { onFaces } from '../../../src/sheet/wrap/on-faces.ts'
import { modelOf, onlyPart, planWithCuts } from '../../model/model-of.ts'
import { randomBlock } from '../random-block.ts'
import { everyDrawing, fonts, keyText, papersOf, said, textsOf } from '../sheets-of.ts'

/** The names of pieces that lie in one of the panels of a net of the first piece, or of the one with that number. */
function namesWithin(text: string, { marks }: Pick<Drawing, 'marks'>, piece = 1): readonly string[] {
  const part = onlyPart(modelOf(text))
  const { solid } = part.pieces[piece - 1]!
  const block = blockOf(part, solid)
  const panels = netOf(block, [...onFaces(solid, block).keys()], part.shape === 'rectangle').map(onPaper)
  return textsOf(marks)
    .filter(mark => mark.subject === 'piece')
    .filter(mark => {
      const { left, right, bottom, top } = textBox(fonts, mark)
      const corners = [left, right].flatMap(x => [bottom, top].map(y => ({ x, y })))
      return panels.some(panel => corners.every(corner => pointInRegion(panel, corner) === 'inside'))
    })
    .flatMap(mark => said({ marks: [mark] }))
}

test('every net has the name of its piece within the line that it is cut along, or says that there is no room', () => {
  fc.assert(
    fc.property(randomBlock, text => {
      const net = text.replace(/ {4}wrap: panels\n/, '').replace('    cuts:', '    wrap: net\n    cuts:')
      const once = text.includes('wrap: net') ? text : net
      for (const [i, { drawings }] of papersOf(once, 'wrap').entries()) {
        // four pieces, the last two of them mirrored
        const names = namesWithin(once, drawings[0], 1 + 2 * i)
        const name = i === 0 ? 'block/1–2' : 'block/3–4'
        if (names.length === 0) expect(keyText(drawings[0])).toContain(`write ${name} on it`)
        else expect(names).toEqual([name])
      }
    }),
    { numRuns: 100 },
  )
})

const holes = ['front', 'top', 'left'].map(
  side => `hole: h-${side}, on: ${side}, at: center, diameter: 4, depth: 6`,
)
const asNet = planWithCuts(holes).replace('    cuts', '    wrap: net\n    cuts')

test('a net that is as small as its holes leaves no room for a name, and says so', () => {
  const small = planWithCuts(
    holes.map(hole => hole.replace('diameter: 4, depth: 6', 'diameter: 3, depth: 1')),
    '6 x 6 x 6',
  ).replace('    cuts', '    wrap: net\n    cuts')
  const [wrap] = papersOf(small, 'wrap')
  expect(namesWithin(small, wrap!.drawings[0])).toEqual([])
  expect(keyText(wrap!.drawings[0])).toContain('No room on the net for its name: write plank/1 on it.')
  // and then it is named under the net where the key is elsewhere
  expect(said(wrap!.large!.drawing)).toContain('plank/1')
})

test('panels whose key is on another paper are named, and lead to a key with that name over it', () => {
  const [wrap] = papersOf(planWithCuts(holes), 'wrap')
  const [first] = wrap!.otherwise!
  const { drawings, beside } = first!
  for (const alone of drawings)
    expect(said(alone)).toEqual(expect.arrayContaining(['plank/1', 'letters: see the key of plank/1']))
  for (const key of beside!.flat()) expect(said(key)[0]).toBe('plank/1')
})

test('so does every panel that is printed by itself, and one without letters has the name alone', () => {
  const through = planWithCuts([
    'hole: a, on: top, at: center, diameter: 4',
    'hole: b, on: left, at: center, diameter: 4, depth: 6',
    'hole: c, on: front, at: { left: 5, bottom: 5 }, diameter: 3, depth: 6',
  ])
  const drawings = everyDrawing(papersOf(through, 'wrap')[0]!)
  const panel = (face: string) => said(drawings.find(({ id }) => id === `plank-wrap-${face}`)!)
  expect(panel('top')).toEqual(expect.arrayContaining(['plank/1', 'letters: see the key of plank/1']))
  expect(panel('bottom')).toContain('plank/1')
  expect(panel('bottom').join(' ')).not.toContain('letters:')
})

test('a net whose key is on another paper leads to it, with its name within', () => {
  const { large } = papersOf(asNet, 'wrap')[0]!
  expect(namesWithin(asNet, large!.drawing)).toEqual(['plank/1'])
  expect(said(large!.drawing)).toContain('letters: see the key of plank/1')
  for (const key of large!.beside) expect(said(key)[0]).toBe('plank/1')
})
