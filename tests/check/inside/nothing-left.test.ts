import { expect, test } from 'vitest'
import { holeComesOut } from '../../../src/check/inside/hole-comes-out.ts'
import { wallInside } from '../../../src/check/inside/wall-inside.ts'
import { found } from '../found.ts'

test('of a part that is cut away whole there is no inside to look at, though holes are drawn in it', () => {
  const plan = `paperjig: 1
title: Nothing left
units: mm
parts:
  disc:
    thickness: 2
    round: 10
    cuts:
      - { cut-out: all, at: { left: 0, bottom: 0 }, size: 10 x 10 }
      - { hole: leaning, at: { left: 0, bottom: 0 }, diameter: 0.5, depth: 3, lean: { toward: left, angle: 1 } }
      - { hole: through, at: { left: 5, bottom: 5 }, diameter: 1 }
`
  for (const rule of [holeComesOut, wallInside]) expect(found(rule, plan)).toEqual([])
})
