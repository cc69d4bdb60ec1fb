import { expect, test } from 'vitest'
import { layOutPacket } from '../../../src/app/lay-out-packet.ts'
import { openFonts } from '../../../src/app/open-fonts.ts'
import { surroundings } from '../../app/surroundings.ts'
import { modelOf } from '../../model/model-of.ts'

const fonts = openFonts(surroundings.fonts)

const beam = (length: number) => `paperjig: 1
title: Pier
units: mm
parts:
  beam:
    size: ${length} x 60 x 44
    wrap: net
    cuts:
      - { row: rail, on: top, at: { left: 17, front: center }, toward: right, spacing: 24, count: ${Math.floor((length - 30) / 24)}, diameter: 9, depth: 20 }
      - { hole: brace, on: front, at: { left: ${length / 2}, bottom: 20 }, diameter: 12 }
      - { hole: foot, on: bottom, at: { left: 31, back: 12 }, diameter: 6, depth: 15 }
      - { hole: tie, on: right, at: center, diameter: 8, depth: 30 }
`

test.each([400, 460, 520, 610, 730])(
  'a net of a block %i mm long goes over several pages, and no seam runs through a hole or along a fold',
  length => {
    const { packet, findings } = layOutPacket(
      modelOf(beam(length)),
      { paper: 'a4', sheets: ['wrap'] },
      fonts,
      undefined,
    )
    expect([...packet.pages].length).toBeGreaterThan(1)
    expect(findings.filter(({ rule }) => rule === 'seam-crosses')).toEqual([])
  },
)
