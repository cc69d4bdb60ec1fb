import type { DistanceFrom } from '../../finding/face-name.ts'
import { nameBit } from '../../length/name-bit.ts'
import { angleText } from '../../length/show-angle.ts'
import { sightLine, tableTilt } from '../../model/bore/lean.ts'
import { tipLength } from '../../model/bore/tip.ts'
import type { Bore, Depth, Lean, Mouth } from '../../model/feature.ts'
import type { Model } from '../../model/part.ts'
import type { Words } from '../../text/words.ts'
import type { BitTip } from '../../workshop/workshop.ts'
import { showSize } from '../show-size.ts'

/** What a bore is called on the piece at hand: its sides, the bits of the shop, and whether its mouth is on the back. */
export type BoreContext = {
  readonly model: Model
  readonly sideName: (side: DistanceFrom) => string
  readonly bits?: BitTip
  readonly behind?: boolean
}

/** "bore 1/4" leaning 8° toward the right, 1/2" deep, counterbore 1/2", 3/16" deep, brad point bit, its point 1/16" deeper". */
export function boreWords(bore: Bore, context: BoreContext): Words {
  return [
    'bore ',
    ...(bore.diameter.basis === 'scaled' ? ['~'] : []),
    ...nameBit(bore.diameter.mm),
    ...(bore.lean ? [` leaning ${leanWords(bore.lean, context)}`] : []),
    ...depthWords(bore.depth, context.model),
    ...(bore.mouth ? mouthWords(bore.mouth, context) : []),
    ...tipWords(bore, context),
  ]
}

export function depthWords(depth: Depth, model: Model): Words {
  return depth === 'through' ? [', through'] : [', ', ...showSize(depth, model), ' deep']
}

/**
 * How the table of the drill press is set for a bore that leans; nothing for one that stands. A rod in the hole stands
 * upright when the table is tilted, so the side that it leans to is the high one.
 */
export function tableWords({ lean }: Bore, { sideName }: Pick<BoreContext, 'sideName'>): string | undefined {
  if (lean === undefined) return undefined
  const tilt = `Table tilted ${angleText(tableTilt({ lean }))}`
  const { from, to, angle } = sightLine(lean)
  if (to === undefined) return `${tilt}, uphill toward ${sideName(from)}.`
  const way = `${angleText(angle)} from ${sideName(from)} toward ${sideName(to)}`
  return `${tilt}, uphill along the sight line: ${way}.`
}

/** "8° toward the right and 5° toward the top" */
function leanWords({ given }: Lean, { sideName }: BoreContext): string {
  return given.map(({ toward, angle }) => `${angleText(angle)} toward ${sideName(toward)}`).join(' and ')
}

function mouthWords(mouth: Mouth, { model, behind = false }: BoreContext): Words {
  const where = behind ? [' on the back'] : []
  const scaled = mouth.diameter.basis === 'scaled' ? ['~'] : []
  if (mouth.kind === 'counterbore') {
    const deep = [', ', ...showSize(mouth.depth, model), ' deep']
    return [', counterbore ', ...scaled, ...nameBit(mouth.diameter.mm), ...deep, ...where]
  }
  return [`, countersink ${angleText(mouth.angle)} to `, ...showSize(mouth.diameter, model), ...where]
}

const points = { twist: 'twist', brad: 'brad point', flat: 'flat' } as const

/** The bit, where the plan says which; of a stopped hole also how far its point goes beyond the depth. */
function tipWords(bore: Bore, { model, bits }: BoreContext): Words {
  const { tip } = bore
  if (tip === undefined) return []
  const bit = `, ${points[tip.point]} bit${tip.angle === undefined ? '' : ` of ${angleText(tip.angle)}`}`
  const deeper = bits === undefined || bore.depth === 'through' ? 0 : tipLength(bore, bits)
  if (deeper === 0) return [bit]
  return [bit, ', its point ', ...showSize({ mm: deeper, basis: 'derived' }, model), ' deeper']
}
