import fc from 'fast-check'
import type { Block, Turned } from './sampled-distance.ts'

/** A hole in a block as the plan says it, in millimetres and degrees; `across` and `along` are shares of the face. */
export type RandomHole = {
  readonly face: 'front' | 'back' | 'left' | 'right' | 'top' | 'bottom'
  readonly along: number
  readonly across: number
  readonly diameter: number
  readonly depth: number | undefined
  readonly lean: { readonly toward: number; readonly angle: number } | undefined
  readonly mouth: 'none' | 'counterbore' | 'countersink'
  readonly bit: 'twist' | 'flat' | 'brad'
}

export type RandomBlock = { readonly block: Block; readonly holes: readonly RandomHole[] }

const whole = (min: number, max: number) => fc.integer({ min, max })

const anyHole: fc.Arbitrary<RandomHole> = fc.record({
  face: fc.constantFrom('front', 'back', 'left', 'right', 'top', 'bottom'),
  along: fc.double({ min: 0.15, max: 0.85, noNaN: true }),
  across: fc.double({ min: 0.25, max: 0.75, noNaN: true }),
  diameter: whole(6, 24).map(n => n / 2),
  depth: fc.option(whole(8, 50), { nil: undefined }),
  lean: fc.oneof(
    { weight: 2, arbitrary: fc.constant(undefined) },
    { weight: 1, arbitrary: fc.record({ toward: whole(0, 3), angle: whole(1, 25) }) },
  ),
  mouth: fc.constantFrom('none', 'none', 'none', 'counterbore', 'countersink'),
  bit: fc.constantFrom('twist', 'flat', 'brad'),
})

export const anyBlock: fc.Arbitrary<RandomBlock> = fc.record({
  block: fc.record({ length: whole(80, 140), width: whole(45, 90), thickness: whole(45, 90) }),
  holes: fc.array(anyHole, { minLength: 4, maxLength: 6 }),
})

/** For each face: what its two directions are measured from, and the words of its four leans. */
const faces = {
  front: { from: ['left', 'bottom'], sizes: ['length', 'width'], sides: ['right', 'top', 'left', 'bottom'] },
  back: { from: ['left', 'bottom'], sizes: ['length', 'width'], sides: ['right', 'top', 'left', 'bottom'] },
  left: {
    from: ['bottom', 'back'],
    sizes: ['width', 'thickness'],
    sides: ['top', 'front', 'bottom', 'back'],
  },
  right: {
    from: ['bottom', 'back'],
    sizes: ['width', 'thickness'],
    sides: ['top', 'front', 'bottom', 'back'],
  },
  top: { from: ['left', 'back'], sizes: ['length', 'thickness'], sides: ['right', 'front', 'left', 'back'] },
  bottom: {
    from: ['left', 'back'],
    sizes: ['length', 'thickness'],
    sides: ['right', 'front', 'left', 'back'],
  },
} as const

const round = (mm: number) => Math.round(mm * 100) / 100

const counterboreDepth = 6

/** The plan of a block; the holes are h0, h1 and so on. */
export function planOfBlock({ block, holes }: RandomBlock): string {
  const { length, width, thickness } = block
  const cuts = holes.map((hole, i) => {
    const { from, sides } = faces[hole.face]
    const [x, y] = placeOnFace(hole, block)
    const { diameter, depth, lean, mouth, bit } = hole
    return [
      `      - { hole: h${i}, on: ${hole.face}, at: { ${from[0]}: ${x}, ${from[1]}: ${y} }, diameter: ${diameter}`,
      depth === undefined ? '' : `, depth: ${depth}, bit: ${bit}`,
      lean === undefined ? '' : `, lean: { toward: ${sides[lean.toward]}, angle: ${lean.angle} }`,
      mouth === 'none'
        ? ''
        : mouth === 'counterbore'
          ? `, counterbore: ${2 * diameter} x ${counterboreDepth}`
          : `, countersink: ${2 * diameter}`,
      ' }\n',
    ].join('')
  })
  return `paperjig: 1\ntitle: Pier\nunits: mm\nparts:\n  block:\n    size: ${length} x ${width} x ${thickness}\n    cuts:\n${cuts.join('')}`
}

function placeOnFace({ face, along, across }: RandomHole, block: Block): readonly [number, number] {
  const { sizes } = faces[face]
  return [round(block[sizes[0]] * along), round(block[sizes[1]] * across)]
}

const axes = { length: 'x', width: 'y', thickness: 'z' } as const
const sizeFrom = { left: 'length', bottom: 'width', back: 'thickness' } as const
const towards = {
  right: ['x', 1],
  left: ['x', -1],
  top: ['y', 1],
  bottom: ['y', -1],
  front: ['z', 1],
  back: ['z', -1],
} as const

const radians = (degrees: number) => (degrees * Math.PI) / 180

/** The hole as it is turned about its axis, worked out from the plan's words alone: nothing of the model is asked. */
export function turnedOf(hole: RandomHole, block: Block, countersink: number): Turned {
  const { from, sides } = faces[hole.face]
  const place = placeOnFace(hole, block)
  const origin = { x: 0, y: 0, z: 0 }
  from.forEach((side, i) => {
    origin[axes[sizeFrom[side]]] = place[i]!
  })
  const [out, sign] = towards[hole.face]
  const size = { x: block.length, y: block.width, z: block.thickness }[out]
  origin[out] = sign > 0 ? size : 0
  const angle = radians(hole.lean?.angle ?? 0)
  const into = { x: 0, y: 0, z: 0 }
  into[out] = -sign * Math.cos(angle)
  if (hole.lean !== undefined) {
    const [aside, way] = towards[sides[hole.lean.toward]!]
    into[aside] = -way * Math.sin(angle)
  }
  return { from: origin, into, profile: profileOf(hole, block, angle, countersink) }
}

/** From so far above the face that the face cuts through all of it. */
function profileOf(
  { diameter, depth, mouth, bit }: RandomHole,
  block: Block,
  angle: number,
  countersink: number,
): Turned['profile'] {
  const radius = diameter / 2
  const rise = 2 * diameter * Math.tan(angle)
  const slope = Math.tan(countersink / 2)
  const head: Turned['profile'] =
    mouth === 'none'
      ? [[-rise, radius]]
      : mouth === 'counterbore'
        ? [
            [-rise, diameter],
            [counterboreDepth, diameter],
            [counterboreDepth, radius],
          ]
        : [
            [-rise, diameter + rise * slope],
            [radius / slope, radius],
          ]
  if (depth === undefined) return [...head, [2 * (block.length + block.width), radius]]
  const spur = 25.4 / 16
  switch (bit) {
    case 'twist':
      return [...head, [depth, radius], [depth + radius / Math.tan(radians(59)), 0]]
    case 'flat':
      return [...head, [depth, radius], [depth, 0]]
    case 'brad':
      return [...head, [depth, radius], [depth, Math.min(radius, spur / 2)], [depth + spur, 0]]
  }
}
