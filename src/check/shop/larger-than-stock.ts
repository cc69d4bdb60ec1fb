import type { FindingOf, Severity } from '../../finding/finding.ts'
import type { Part, Stock } from '../../model/part.ts'
import type { Size } from '../../model/size.ts'
import { coincident } from '../../number/tolerance.ts'
import { count, mm, placeOfPart } from '../place.ts'
import { commonPractice, type Rule } from '../rule.ts'

/** A part that is longer, wider or thicker than the stock that it is to be cut from. */
export const largerThanStock: Rule<'larger-than-stock'> = {
  find: ({ model, parts }) => {
    const stock = new Map(model.stock.map(kind => [kind.id, kind]))
    return parts.flatMap(({ part }) => {
      const from = part.stockId === undefined ? undefined : stock.get(part.stockId)
      return from === undefined ? [] : larger(part, from)
    })
  },
  explanation: {
    purpose:
      'No part comes out of a board that is shorter or narrower than itself. One that is thicker is built up: boards are glued face to face, with something over for flattening.',
    limit: () => 'the length, width and thickness of the stock; the grain runs along the length of both',
    origin: commonPractice,
  },
}

function larger(part: Part, stock: Stock): readonly FindingOf<'larger-than-stock'>[] {
  return (['length', 'width', 'thickness'] as const).flatMap(direction => {
    const limit = stock[direction]
    const size = part[direction]
    if (limit === undefined || size.mm <= limit.mm + coincident) return []
    const boards = direction === 'thickness' ? boardsFor(size, limit) : undefined
    return [
      {
        rule: 'larger-than-stock',
        severity: boards?.severity ?? 'error',
        places: [{ ...placeOfPart(part), source: size.source }, { source: limit.source }],
        measured: mm(size.mm),
        limit: mm(limit.mm),
        facts: { direction, stock: stock.id, ...(boards ? { boards: count(boards.count) } : {}) },
      },
    ]
  })
}

/** How many boards make up the thickness. A sum that is exactly it leaves nothing for flattening. */
function boardsFor(thickness: Size, board: Size): { readonly count: number; readonly severity: Severity } {
  const boards = Math.ceil((thickness.mm - coincident) / board.mm)
  const over = boards * board.mm - thickness.mm
  return { count: boards, severity: over <= coincident ? 'warning' : 'note' }
}
