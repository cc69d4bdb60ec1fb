import { expect, test } from 'vitest'
import type { Mark } from '../../../src/drawing/mark.ts'
import { boundsOfMarks } from '../../../src/drawing/mark-bounds.ts'
import { mapEntry } from '../../../src/sheet/cover/map-entry.ts'
import { pageList } from '../../../src/sheet/cover/page-list.ts'
import { partEntry } from '../../../src/sheet/cover/part-entry.ts'
import { modelOf, planOf } from '../../model/model-of.ts'
import { fonts, said } from '../sheets-of.ts'

/** As on the papers of a large packet: every other page, so that no run makes the list short. */
const scattered = Array.from({ length: 90 }, (_, i) => 101 + 2 * i)
/** A column of a cover on A5. */
const column = 70

const asText = (marks: readonly Mark[]): string => said({ marks }).join(' ')

test('a part that is on many pages has all of them in its entry, in lines that stay within it', () => {
  const model = modelOf(planOf(''))
  const { draw, height } = partEntry(model.parts[0]!, scattered, column, model, fonts)
  const marks = draw({ x: 0, y: 0 })
  expect(asText(marks)).toContain(pageList(scattered))
  const { right, bottom } = boundsOfMarks(fonts, marks)
  expect(right).toBeLessThanOrEqual(column)
  expect(bottom).toBeGreaterThanOrEqual(-height)
})

test('so has a drawing that goes over many pages, and its map lies below the list', () => {
  const into: number[] = []
  const map = {
    part: 'Rail',
    sheet: 'template for the face side',
    pages: scattered,
    width: () => column,
    draw: ({ top }: { readonly top: number }) => {
      into.push(top)
      return []
    },
  }
  const marks = mapEntry(map, column, fonts).draw({ x: 0, y: 0 })
  expect(asText(marks)).toContain(pageList(scattered))
  expect(into[0]).toBeLessThanOrEqual(boundsOfMarks(fonts, marks).bottom)
})
