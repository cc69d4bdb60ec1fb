import type { Model, Part } from '../model/part.ts'
import type { Words } from '../text/words.ts'
import { showSize } from './show-size.ts'

/** Length, width and thickness: "6 7/8" × 1 5/16" × 7/16"". */
export function sizeWords(
  { length, width, thickness }: Pick<Part, 'length' | 'width' | 'thickness'>,
  model: Model,
): Words {
  return [...showSize(length, model), ' × ', ...showSize(width, model), ' × ', ...showSize(thickness, model)]
}

/** What the plan says it is cut from: "plank, hard maple". */
export function stockWords({ stock, wood }: Pick<Part, 'stock' | 'wood'>): string {
  return [stock, wood].filter(word => word !== undefined).join(', ')
}

/** The size with the stock behind it. */
export function sizeAndStock(part: Part, model: Model): Words {
  const stock = stockWords(part)
  return [...sizeWords(part, model), ...(stock === '' ? [] : [`  ${stock}`])]
}
