import type { FindingOf, Severity } from '../../finding/finding.ts'
import type { Part, Stock } from '../../model/part.ts'
import type { Size } from '../../model/size.ts'
import { coincident } from '../../number/tolerance.ts'
import { count, mm, placeOfPart } from '../place.ts'
import { commonPractice, type Rule } from '../rule.ts'
import { bestLie, type Lie, uprightLie } from '../subject/lie.ts'

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
  const lies = [uprightLie(part), bestLie(part)]
  const fits = (lie: Lie) => within(lie.along, stock.length) && within(lie.across, stock.width)
  // where it fits neither way the part is spoken of as it is drawn
  const { along, across } = lies.find(fits) ?? lies[0]!
  const turned = part.width.mm > part.length.mm
  const [long, short] = turned ? (['width', 'length'] as const) : (['length', 'width'] as const)
  return [
    ...tooLarge(part, stock, { direction: long, size: along, limit: stock.length }),
    ...tooLarge(part, stock, { direction: short, size: across, limit: stock.width }),
    ...tooLarge(part, stock, { direction: 'thickness', size: part.thickness.mm, limit: stock.thickness }),
  ]
}

type Held = {
  readonly direction: 'length' | 'width' | 'thickness'
  readonly size: number
  readonly limit: Size | undefined
}

function tooLarge(
  part: Part,
  stock: Stock,
  { direction, size, limit }: Held,
): readonly FindingOf<'larger-than-stock'>[] {
  if (limit === undefined || within(size, limit)) return []
  const boards = direction === 'thickness' ? boardsFor(size, limit.mm) : undefined
  return [
    {
      rule: 'larger-than-stock',
      severity: boards?.severity ?? 'error',
      places: [{ ...placeOfPart(part), source: part[direction].source }, { source: limit.source }],
      measured: mm(size),
      limit: mm(limit.mm),
      facts: { direction, stock: stock.id, ...(boards ? { boards: count(boards.count) } : {}) },
    },
  ]
}

function within(size: number, limit: Size | undefined): boolean {
  return limit === undefined || size <= limit.mm + coincident
}

/** How many boards make up the thickness. A sum that is exactly it leaves nothing for flattening. */
function boardsFor(
  thickness: number,
  board: number,
): { readonly count: number; readonly severity: Severity } {
  const boards = Math.ceil((thickness - coincident) / board)
  const over = boards * board - thickness
  return { count: boards, severity: over <= coincident ? 'warning' : 'note' }
}
