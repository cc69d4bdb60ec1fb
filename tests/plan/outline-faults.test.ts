import { expect, it } from 'vitest'
import { onlyFindingOf } from './reading.ts'

const withOutline = (...steps: readonly string[]) =>
  `paperjig: 1\ntitle: Pier\nunits: inch\nparts:\n  jib:\n    thickness: 1/2\n    outline:\n${steps
    .map(step => `      - ${step}\n`)
    .join('')}`

/** The steps after the first corner, what is found wrong, in which line and at which characters. */
it.each([
  [['{ arc: [1, 1], radius: 1, turn: left, bend: 4 }'], 'not-both', 9, 'bend: 4'],
  [['{ arc: [1, 1], radius: 1 }'], 'missing-key', 9, 'radius: 1 }'],
  [['{ arc: [1, 1], turn: left }'], 'missing-key', 9, 'turn: left }'],
  [['{ arc: [1, 1] }'], 'missing-key', 9, 'arc: [1, 1] }'],
  [['{ arc: [1, 1], tangent: false }'], 'missing-key', 9, 'arc: [1, 1], tangent'],
  [['{ arc: [1, 1], radius: 1, turn: up }'], 'not-a-choice', 9, 'up }'],
  [['{ to: [1, 1], radius: 1 }'], 'wrong-kind', 9, 'radius: 1 }'],
  [['{ to: [1, 1], arc: [2, 2] }'], 'not-both', 9, 'arc: [2, 2]'],
  [['{ to: [1] }'], 'wrong-kind', 9, '[1]'],
  [['{ to: 1 }'], 'wrong-kind', 9, '1 }'],
  [['{ to: { left: 1 } }'], 'missing-key', 9, '{ left: 1 }'],
  [['{ to: { left: 1, right: 2 } }'], 'not-both', 9, 'right: 2'],
  [['{ to: { front: 1, top: 2 } }'], 'unknown-key', 9, 'front: 1'],
  [['{ name: foot }'], 'missing-key', 9, 'name: foot'],
  [['{ curve: [] }'], 'nothing-in-it', 9, 'curve'],
  [['{ to: [1, 1], round: 1, chamfer: 1 }'], 'not-both', 9, 'chamfer: 1'],
  [['{ to: [1, 1], corner: nose }'], 'missing-key', 9, 'corner'],
  [['{ to: [1, 1], name: left }'], 'reserved-name', 9, 'left }'],
  [['{ to: [1, 1], name: foot }', '{ to: [2, 0], name: foot }'], 'duplicate-edge', 10, 'foot }'],
  [['{ to: [1, 1], raduis: 1 }'], 'unknown-key', 9, 'raduis'],
  [['{ to: [1 1, 1] }'], 'not-a-size', 9, '1'],
  [['{ to: [1, 1], round: 1/4 1/8 }'], 'not-a-size', 9, '1/8'],
] as const)('in the outline %j finds %s', (steps, rule, line, guilty) => {
  const text = withOutline('{ to: [0, 0] }', ...steps, '{ to: [3, 3] }')
  const found = onlyFindingOf(text)
  expect({ rule: found.rule, line: found.line }).toEqual({ rule, line })
  expect(
    text
      .split('\n')
      [line - 1]!.slice(found.column - 1)
      .slice(0, guilty.length),
  ).toBe(guilty)
})

it('an outline begins at a corner and has two steps at least', () => {
  expect(onlyFindingOf(withOutline('{ arc: [0, 0], bend: 40 }', '{ to: [1, 1] }')).rule).toBe('wrong-kind')
  expect(onlyFindingOf(withOutline('{ to: [0, 0] }')).rule).toBe('nothing-in-it')
})
