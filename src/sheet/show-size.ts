import { showLength } from '../length/show-length.ts'
import type { Model } from '../model/part.ts'
import type { Size } from '../model/size.ts'
import type { Words } from '../text/words.ts'

/** A size as the plan wants it shown: its unit, its precision, and `~` where it was scaled off the drawing. */
export function showSize({ mm, basis }: Pick<Size, 'mm' | 'basis'>, { units, precision }: Model): Words {
  return showLength(mm, { unit: units, precision }, { basis })
}
