import type { Drawing } from '../drawing/drawing.ts'

/** A drawing that is made when it is looked at: of most sheets few arrangements are. */
export function whenLookedAt(
  about: Pick<Drawing, 'id' | 'caption'>,
  draw: () => Pick<Drawing, 'marks' | 'bounds'>,
): Drawing {
  let made: ReturnType<typeof draw> | undefined
  const make = () => {
    made ??= draw()
    return made
  }
  return {
    ...about,
    keepWhole: [],
    get marks() {
      return make().marks
    },
    get bounds() {
      return make().bounds
    },
  }
}
