import fc from 'fast-check'
import { expect, test } from 'vitest'
import { apply, compose, identity } from '../../../src/geometry/shape/matrix.ts'
import { distance } from '../../../src/geometry/shape/point.ts'
import { lying, papers } from '../../../src/paper/papers.ts'
import { fitToPage } from '../../../src/paper/printer/fit-to-page.ts'
import { diagonalsOf, measurePrinter } from '../../../src/paper/printer/measure-printer.ts'
import { correctionFor, type Printer, printerError } from '../../../src/paper/printer/printer.ts'
import { barsFor, squareSide, usualBars } from '../../../src/paper/printer/scale-lengths.ts'

const share = (low: number, high: number) => fc.double({ min: low, max: high, noNaN: true })
const anyPrinter = fc.record({
  name: fc.constant('attic'),
  across: share(0.97, 1.03),
  along: share(0.97, 1.03),
  lean: share(-0.03, 0.03),
})
const anyPaper = fc.constantFrom(...Object.values(papers).flatMap(p => [p, lying(p)]))

test('a correction and then the printer’s error leave everything where it was, within 1e-9', () => {
  fc.assert(
    fc.property(anyPrinter, anyPaper, (printer, paper) => {
      const both = compose(correctionFor(printer, paper), printerError(printer, paper))
      for (const key of ['a', 'b', 'c', 'd', 'e', 'f'] as const)
        expect(Math.abs(both[key] - identity[key])).toBeLessThan(1e-9)
    }),
  )
})

test('without a printer nothing is corrected', () => {
  expect(correctionFor(undefined, papers.a4)).toBe(identity)
})

/** What a rule reads on a sheet that the printer made, from the error alone. */
function readingsOf(printer: Printer) {
  const m = printerError(printer, papers.letter)
  const side = squareSide(usualBars)
  const span = (ax: number, ay: number, bx: number, by: number): number =>
    distance(apply(m, { x: 20 + ax, y: 20 + ay }), apply(m, { x: 20 + bx, y: 20 + by }))
  return {
    bars: usualBars,
    across: span(0, 0, usualBars.across, 0),
    along: span(0, 0, 0, usualBars.along),
    diagonals: [span(0, 0, side, side), span(side, 0, 0, side)] as const,
  }
}

test('a printer that is measured from its own sheet is the printer', () => {
  fc.assert(
    fc.property(
      anyPrinter.filter(
        p => Math.abs(p.lean) < 0.01 && Math.max(Math.abs(p.across - 1), Math.abs(p.along - 1)) < 0.029,
      ),
      printer => {
        const measured = measurePrinter('attic', readingsOf(printer))
        if (!('printer' in measured)) throw new Error(JSON.stringify(measured))
        expect(measured.printer.across).toBeCloseTo(printer.across, 9)
        expect(measured.printer.lean).toBeCloseTo(printer.lean, 9)
        expect(measured.printer.along).toBeCloseTo(printer.along, 9)
      },
    ),
  )
})

test('a square that is corrected for a printer comes out of it with equal diagonals', () => {
  fc.assert(
    fc.property(anyPrinter, anyPaper, (printer, paper) => {
      const out = (x: number, y: number) =>
        apply(printerError(printer, paper), apply(correctionFor(printer, paper), { x, y }))
      expect(distance(out(10, 10), out(110, 110))).toBeCloseTo(Math.hypot(100, 100), 9)
      expect(distance(out(110, 10), out(10, 110))).toBeCloseTo(Math.hypot(100, 100), 9)
    }),
  )
})

test('what lies across an upright sheet lies along a lying one, and is corrected as that', () => {
  const wide = { name: 'wide', across: 1.02, along: 1, lean: 0 }
  const out = (paper: typeof papers.letter, dx: number, dy: number): number => {
    const m = printerError(wide, paper)
    return distance(apply(m, { x: 5, y: 5 }), apply(m, { x: 5 + dx, y: 5 + dy }))
  }
  expect(out(papers.letter, 100, 0)).toBeCloseTo(102, 9)
  expect(out(lying(papers.letter), 0, 100)).toBeCloseTo(102, 9)
  expect(out(lying(papers.letter), 100, 0)).toBeCloseTo(100, 9)
})

test('a lying sheet is the upright one turned, whichever way the driver turns it', () => {
  fc.assert(
    fc.property(anyPrinter, printer => {
      const up = printerError(printer, papers.letter)
      const flat = printerError(printer, lying(papers.letter))
      // turned by R the error is R⁻¹·M·R, the same for both quarter turns: a and d change places, b becomes −c
      expect([flat.a, flat.b, flat.c, flat.d]).toEqual(
        [up.d, -up.c, -up.b, up.a].map(v => (v === 0 ? expect.closeTo(0, 12) : v)),
      )
    }),
  )
})

test('more than 3 % off is refused, and 3 % is not', () => {
  const measure = (across: number, along: number) =>
    measurePrinter('attic', { bars: usualBars, across, along })
  expect(measure(180 * 0.9701, 240)).toHaveProperty('printer')
  expect(measure(180 * 0.969, 240)).toMatchObject({ fault: { kind: 'too-far' } })
  expect(measure(180, 240 * 1.031)).toMatchObject({ fault: { kind: 'too-far' } })
})

test('readings given one for the other are told from a printer that is off', () => {
  expect(measurePrinter('attic', { bars: usualBars, across: 239, along: 179 })).toEqual({
    fault: { kind: 'swapped' },
  })
})

/** Calculated by hand: the smaller of the two ratios of what the printer reaches of the sheet to the page. */
test.each([
  ['Letter on Letter, quarter-inch edges', (215.9 - 12.7) / 215.9, 'Letter', 'Letter'],
  ['A4 on Letter, edges of a laser printer', (279.4 - 2 * 4.2333) / 297, 'A4', 'Letter'],
  ['Tabloid on Letter, no edge', 279.4 / 431.8, 'Tabloid', 'Letter'],
  ['A3 on A4, no edge', 210 / 297, 'A3', 'A4'],
])('“fit to page” of %s is recognized by its shrinkage', (_, factor, page, sheet) => {
  expect(fitToPage(factor, factor)).toEqual({ page, sheet })
})

test('what is shrunk one way only is no “fit to page”', () => {
  expect(fitToPage(0.94, 1)).toBeUndefined()
})

test('diagonals that belong to no such square are refused, and so is a lean of more than 3 in 100', () => {
  const at = (diagonals: readonly [number, number]) =>
    measurePrinter('attic', { bars: usualBars, across: 180, along: 240, diagonals })
  expect(at([220, 212.1])).toMatchObject({ fault: { kind: 'diagonals' } })
  expect(at([210, 210])).toMatchObject({ fault: { kind: 'diagonals' } })
  expect(at(diagonalsOf(150, { across: 1, along: 1, lean: 0.04 }))).toMatchObject({ fault: { kind: 'lean' } })
  expect(at([212.1, 212.2])).toHaveProperty('printer')
})

test('bars are whole tens, as long as there is room for and never longer than on Letter and A4', () => {
  expect(barsFor(187, 245)).toEqual({ across: 180, along: 240 })
  expect(barsFor(400, 400)).toEqual({ across: 180, along: 240 })
  expect(barsFor(119.9, 171)).toEqual({ across: 110, along: 170 })
  expect(squareSide(usualBars)).toBe(150)
})
