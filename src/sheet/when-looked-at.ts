import type { Drawing } from '../drawing/drawing.ts'
import { once } from './once.ts'

/** A drawing that is made when it is looked at: of most sheets few arrangements are. */
export function whenLookedAt(
  about: Pick<Drawing, 'id' | 'caption'>,
  draw: () => Pick<Drawing, 'marks' | 'bounds'> & Partial<Pick<Drawing, 'keepWhole'>>,
): Drawing {
  const made = once(draw)
  return {
    ...about,
    get keepWhole() {
      return made().keepWhole ?? []
    },
    get marks() {
      return made().marks
    },
    get bounds() {
      return made().bounds
    },
  }
}
