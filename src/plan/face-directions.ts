import type { Side } from '../finding/side.ts'

/** The two sides that a distance in one direction of a face can be taken from, the one at its zero first. */
export type Direction = readonly [Side, Side]

const leftRight: Direction = ['left', 'right']
const bottomTop: Direction = ['bottom', 'top']
const frontBack: Direction = ['front', 'back']

/** Every face has two directions, and `at` gives one distance in each. */
export const faceDirections: Readonly<
  Record<Side, { readonly along: Direction; readonly across: Direction }>
> = {
  front: { along: leftRight, across: bottomTop },
  back: { along: leftRight, across: bottomTop },
  top: { along: leftRight, across: frontBack },
  bottom: { along: leftRight, across: frontBack },
  left: { along: frontBack, across: bottomTop },
  right: { along: frontBack, across: bottomTop },
}
