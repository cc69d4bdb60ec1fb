import { describe, expect, test } from 'vitest'
import type { Page } from '../../src/drawing/page.ts'
import { circle } from '../../src/geometry/shape/circle.ts'
import { identity, quarterTurns, shift } from '../../src/geometry/shape/matrix.ts'
import { point } from '../../src/geometry/shape/point.ts'
import { renderSvgDrawing } from '../../src/render/svg/render-drawing.ts'
import { renderSvgPage } from '../../src/render/svg/render-page.ts'
import { readSvg } from '../readback/read-svg.ts'
import { bundledFonts } from '../text/bundled-font.ts'
import { hostileLabels, hostilePage } from './hostile-page.ts'
import { bracket, chain, packet, path, placedDrawings, samplePage, text } from './sample-page.ts'

const fonts = bundledFonts()

function sheet(furniture: Page['furniture']): Page {
  return {
    paper: { name: 'a5', width: 148, height: 210 },
    number: 3,
    placed: [],
    furniture,
    correction: identity,
  }
}

function svg(page: Page): string {
  return renderSvgPage(page, packet([page]), fonts)
}

describe('a page', () => {
  test('has its size in millimetres, and one unit is one of them', () => {
    expect(svg(sheet([]))).toContain('width="148mm" height="210mm" viewBox="0 0 148 210"')
  })

  test('has plain millimetres from the upper left corner and no transform', () => {
    const page = svg(sheet([path('cut', 'cut', chain(point(10, 200), point(148, 0)))]))
    expect(page).toContain('<path d="M10 10L148 210" stroke-width="0.18"/>')
    expect(page).not.toContain('transform')
  })

  test('has one transform, on everything, when the printer is corrected', () => {
    const page = { ...samplePage(), correction: { ...identity, a: 1.02 } }
    expect(svg(page).match(/transform=/g)).toHaveLength(1)
    expect(readSvg(svg(page)).chains.every(c => c.groups[0] === 'correction')).toBe(true)
  })

  test('has whole circles as circles and arcs as arcs, none wider than a quarter turn', () => {
    const page = svg(sheet([path('drill', 'drill', circle(point(20, 30), 3.175))]))
    expect(page).toContain('<circle cx="20" cy="180" r="3.175" stroke-width="0.18"/>')
    const half = {
      ...circle(point(20, 30), 3),
      closed: false,
      segments: circle(point(20, 30), 3).segments.slice(0, 1),
    }
    expect(svg(sheet([path('cut', 'cut', half)]))).toContain('M23 180A3 3 0 0 0 20 177A3 3 0 0 0 17 180')
  })

  test('groups marks by drawing, layer and subject, under names an editor can show', () => {
    const groups = new Set(readSvg(svg(placedDrawings())).chains.map(c => c.groups.join(' > ')))
    expect(groups).toContain('bracket-1-template > bracket-1-template.drill > bracket-1-template.drill.pin')
    // the second placing of the drawing has names of its own
    expect(groups).toContain(
      'bracket-1-template-2 > bracket-1-template-2.drill > bracket-1-template-2.drill.pin',
    )
  })

  test('says of each group of a layer which layer it is, whatever its id had to be', () => {
    const page = svg(placedDrawings())
    const named = [...page.matchAll(/<g id="([^"]+)" data-layer="([^"]+)">/g)].map(([, id, layer]) => [
      id,
      layer,
    ])
    const one = (name: string) => ['cut', 'drill', 'text'].map(layer => [`${name}.${layer}`, layer])
    expect(named).toEqual([...one('bracket-1-template'), ...one('bracket-1-template-2')])
  })

  test('has no text where none is wanted, and everything else as it was', () => {
    const plain = renderSvgPage(samplePage(), packet([]), fonts, { text: false })
    expect(readSvg(plain).texts).toEqual([])
    expect(plain).not.toContain('role="img"')
    const drawn = readSvg(svg(samplePage())).chains
    expect(readSvg(plain).chains.length).toBe(drawn.length)
  })

  test('has all its lines as hairlines where these are wanted, and the dashes that tell them apart', () => {
    const fine = readSvg(renderSvgPage(samplePage(), packet([]), fonts, { lines: 'hairline' }))
    const drawn = readSvg(svg(samplePage()))
    const strokes = fine.chains.filter(c => c.paint === 'stroke')
    // a thousandth of an inch
    expect(new Set(strokes.map(c => c.width))).toEqual(new Set([0.0254]))
    expect(fine.chains.map(c => c.dashes)).toEqual(drawn.chains.map(c => c.dashes))
  })

  test('keeps the words of its outlines as titles', () => {
    const page = svg(sheet([text([{ whole: '2', over: '1', under: '2' }, '" & ⌀'], point(10, 10), 3.5)]))
    expect(page).toContain('<g role="img"><title>2 1/2&quot; &amp; ⌀</title><path d="M')
    expect(page).toContain('<title>Pier, page 3</title>')
  })

  test('is the same text twice', () => {
    expect(renderSvgPage(samplePage(), packet([]), bundledFonts())).toBe(svg(samplePage()))
  })

  test('with a number that is none is refused', () => {
    expect(() => svg(sheet([path('cut', 'cut', chain(point(0, 0), point(Number.NaN, 1)))]))).toThrow(
      RangeError,
    )
  })

  test('with hostile labels is valid, shows them as text and runs nothing', () => {
    const page = hostilePage()
    const file = renderSvgPage(page, { title: hostileLabels.join(' '), language: '"><script>' }, fonts)
    // the reader throws at anything but groups, titles, paths and circles, and at ids that are not valid or unique
    const read = readSvg(file)
    const shown = read.texts.map(t => t.text)
    for (const [written] of hostileLabels) {
      const hiddenAsCodes = written.replace(
        /[\p{Cc}\p{Cf}\p{Cs}\p{Cn}]/gu,
        c => `[U+${c.codePointAt(0)!.toString(16).toUpperCase().padStart(4, '0')}]`,
      )
      expect(shown).toContain(hiddenAsCodes)
    }
    expect(file).not.toMatch(/<script|\son\w+=|href/i)
  })
})

describe('a drawing for a machine', () => {
  const file = renderSvgDrawing(bracket(), 'en')
  const read = readSvg(file)

  test('has its outline, holes and slots as hairlines, and nothing that is only to be read', () => {
    expect(read.chains).toHaveLength(3)
    expect(read.chains.every(c => c.closed && c.width < 0.03 && c.paint === 'stroke')).toBe(true)
    expect(read.texts).toEqual([])
  })

  test('is as large as its shapes and a millimetre around them', () => {
    // the bow on r 300 rises above the corners by its height over the chord of 80 mm
    const top = 40 + 300 - Math.sqrt(300 ** 2 - 40 ** 2)
    expect(read.width).toBeCloseTo(92, 9)
    expect(read.height).toBeCloseTo(top + 2, 4)
    const [outline] = read.chains
    expect(outline!.curves[0]!.at(0).x).toBeCloseTo(1, 4)
    expect(outline!.curves[0]!.at(0).y).toBeCloseTo(1, 4)
  })

  test('has the layers that are asked for', () => {
    const holes = readSvg(renderSvgDrawing(bracket(), 'en', { layers: ['drill'] }))
    expect(holes.chains).toHaveLength(1)
    expect(holes.width).toBeCloseTo(2 * 6.35 + 2, 5)
  })

  test('has its text where it is asked for, and room for it', () => {
    const lettered = readSvg(renderSvgDrawing(bracket(), 'en', { text: fonts }))
    expect(lettered.texts.map(t => t.text)).toEqual(['A', '2 1/2 × 7/16'])
    expect(lettered.chains).toHaveLength(3)
    const below = { ...bracket(), marks: [...bracket().marks, text(['stand off'], point(0, -20), 5)] }
    expect(readSvg(renderSvgDrawing(below, 'en', { text: fonts })).height).toBeGreaterThan(read.height + 20)
    expect(renderSvgDrawing(below, 'en')).toBe(file)
  })

  test('has its lines as wide as on paper where that is asked for', () => {
    const printed = readSvg(renderSvgDrawing(bracket(), 'en', { lines: 'printed' }))
    expect(printed.chains.map(c => c.width)).toEqual(read.chains.map(() => 0.18))
    expect(printed.width).toBe(read.width)
  })

  test('leaves the rough-cut line around a part to the scissors', () => {
    const drawing = bracket()
    const around = path('cut', 'rough-cut', circle(point(45, 20), 60))
    const more = renderSvgDrawing({ ...drawing, marks: [...drawing.marks, around] }, 'en')
    expect(more).toBe(file)
  })
})

test('a drawing turned by quarter turns has no trace of rounding', () => {
  const page = { ...sheet([]), placed: [{ drawing: bracket(), matrix: quarterTurns(2) }] }
  expect(
    svg({ ...page, placed: [{ ...page.placed[0]!, matrix: { ...quarterTurns(2), e: 100, f: 100 } }] }),
  ).toContain('d="M100 110L10 110L10 140A10 10 0 0 0 20 150')
  expect(svg({ ...page, placed: [{ drawing: bracket(), matrix: shift(0.1 + 0.2, 0) }] })).toContain(
    'M0.3 210',
  )
})
