import fc from 'fast-check'

const mm = (min: number, max: number): fc.Arbitrary<string> =>
  fc.double({ min, max, noNaN: true }).map(value => `${value.toFixed(3)} mm`)

const directions = {
  front: [
    ['left', 'right'],
    ['bottom', 'top'],
  ],
  back: [
    ['left', 'right'],
    ['bottom', 'top'],
  ],
  top: [
    ['left', 'right'],
    ['front', 'back'],
  ],
  bottom: [
    ['left', 'right'],
    ['front', 'back'],
  ],
  left: [
    ['front', 'back'],
    ['bottom', 'top'],
  ],
  right: [
    ['front', 'back'],
    ['bottom', 'top'],
  ],
} as const

const faces = ['front', 'back', 'top', 'bottom', 'left', 'right'] as const

const size = {
  length: fc.double({ min: 20, max: 400, noNaN: true }),
  side: fc.double({ min: 12, max: 90, noNaN: true }),
}

/** A hole or a row anywhere on a face; few distances to choose from, so that many are shared. */
const cut = fc
  .record({
    face: fc.constantFrom(...faces),
    sides: fc.tuple(fc.nat(1), fc.nat(1)),
    along: fc.oneof(fc.constantFrom('5 mm', '8 mm', 'center'), mm(1, 60)),
    across: fc.constantFrom('4 mm', '6 mm', '9.5 mm', 'center'),
    diameter: fc.constantFrom('1.5 mm', '3 mm', '8 mm'),
    depth: fc.constantFrom('', ', depth: 4 mm'),
    row: fc.option(
      fc.record({ spacing: mm(1.2, 14), count: fc.integer({ min: 2, max: 24 }), across: fc.boolean() }),
    ),
  })
  .map(({ face, sides, along, across, diameter, depth, row }) => {
    const [first, second] = directions[face]
    const at = `on: ${face}, at: { ${first[sides[0]]}: ${along}, ${second[sides[1]]}: ${across} }`
    const bit = `diameter: ${diameter}${depth}`
    if (row === null) return `hole: h#, ${at}, ${bit}`
    const toward = row.across ? second[1 - sides[1]] : first[1 - sides[0]]
    return `row: h#, ${at}, toward: ${toward}, spacing: ${row.spacing}, count: ${row.count}, ${bit}`
  })

/** How far a block may be off its size. */
const off = fc.double({ min: -0.8, max: 0.8, noNaN: true })

const sizeOf = (sides: readonly number[]) => sides.map(side => `${side.toFixed(3)} mm`).join(' x ')

/** A plan of one block with holes and rows on all its faces, in two hands. */
export const randomBlock: fc.Arbitrary<string> = fc
  .record({
    length: size.length,
    width: size.side,
    thickness: size.side,
    cuts: fc.array(cut, { minLength: 1, maxLength: 9 }),
    faceEdge: fc.constantFrom('bottom', 'top'),
    referenceEnd: fc.constantFrom('left', 'right'),
    units: fc.constantFrom('inch', 'mm'),
    more: fc.constantFrom('', '    sides: { left: nose, front: deck }\n'),
    wrap: fc.constantFrom('', '    wrap: panels\n', '    wrap: net\n'),
    measured: fc.option(fc.tuple(off, off, off)),
  })
  .map(
    ({ length, width, thickness, cuts, faceEdge, referenceEnd, units, more, wrap, measured }) => `paperjig: 1
title: Random
units: ${units}
parts:
  block:
    make: 4
    mirrored: true
    face-edge: ${faceEdge}
    reference-end: ${referenceEnd}
    size: ${sizeOf([length, width, thickness])}
${more}${wrap}${measured === null ? '' : `    measured: ${sizeOf([length + measured[0], width + measured[1], thickness + measured[2]])}\n`}    cuts:
${cuts.map((body, i) => `      - { ${body.replace('#', `${i}`)} }\n`).join('')}`,
  )
