/**
 * A plan of so many parts with ten cuts each, counted as features: rectangles with rounded corners, arched outlines and
 * discs, by turns, every other part pinned to the one before. It is sound, but for parts a maker would call small.
 */
export function largePlan(parts: number): string {
  const bodies = Array.from({ length: parts }, (_, i) => bodyOf(i))
  const joints = Array.from(
    { length: Math.floor(parts / 2) },
    (_, i) => `  - { pin: dowel, through: [${nameOf(2 * i)}.low, ${nameOf(2 * i + 1)}.low] }\n`,
  )
  return [
    'paperjig: 1\ntitle: A very long pier\nunits: mm\n',
    'let: { board: 18, dowel: 8 }\n',
    'stock: { plank: { thickness: board, width: 200, length: 2400 } }\n',
    'pins: { dowel: { diameter: dowel, length: 2 * board } }\n',
    `parts:\n${bodies.join('')}`,
    joints.length === 0 ? '' : `joints:\n${joints.join('')}`,
  ].join('')
}

const nameOf = (part: number) => `part-${part + 1}`

/** A few sizes differ from part to part, so that nothing is worked out once for all. */
function bodyOf(i: number): string {
  const length = 360 + (i % 37)
  const common = [
    '      - { hole: low, at: { left: 120, bottom: 62 }, for: dowel, fit: push }',
    `      - { hole: high, at: { right: ${120 + (i % 5)}, bottom: 62 }, diameter: dowel }`,
  ]
  const others = [
    `      - { row: pegs, at: { left: center, bottom: 30 }, toward: right, spacing: ${20 + (i % 3)}, count: 5, diameter: 5, depth: 9 }`,
    '      - { slot: mouth, at: { left: center, bottom: 46 }, size: 30 x board }',
    '      - { cut-out: window, at: { left: center, bottom: 90 }, size: 60 x 20, corners: 4 }',
  ]
  const notch = '      - { notch: step, on: bottom, at: { left: 60 }, size: 24 x 9 }'
  const bolts = '      - { hole: bolt, at: { left: 90, bottom: 110 }, diameter: 6 }'
  switch (i % 3) {
    case 0:
      return part(i, [`    size: ${length} x 140`, '    corners: 12'], [...common, ...others, notch])
    case 1:
      return part(
        i,
        [
          '    outline:',
          '      - { to: [0, 0] }',
          `      - { to: [${length}, 0] }`,
          `      - { to: [${length}, 120], round: 6 }`,
          `      - { arc: [0, 120], through: [${length / 2}, 150] }`,
        ],
        [...common, ...others, notch],
      )
    default:
      return part(i, [`    size: ${length} x 140`, '    ends: round'], [...common, ...others, bolts])
  }
}

function part(i: number, shape: readonly string[], cuts: readonly string[]): string {
  return `  ${nameOf(i)}:\n    from: plank\n${[...shape, '    cuts:', ...cuts].join('\n')}\n`
}
