/** A source of numbers from 0 up to, not including, 1. */
export type Random = () => number

/**
 * A small repeatable generator of numbers, so that a case can be run again from its seed.
 *
 * Source: Tommy Ettinger's mulberry32, public domain.
 */
export function randomFrom(seed: number): Random {
  let state = seed >>> 0
  return () => {
    state = (state + 0x6d2b79f5) >>> 0
    let mixed = Math.imul(state ^ (state >>> 15), state | 1)
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32
  }
}

type Edit = (bytes: Uint8Array, random: Random) => Uint8Array

/** What plans, YAML and sizes are made of, and what trips readers of them. */
const tokens = [
  ...['paperjig: 1', 'title:', 'units: mm', 'parts:', 'stock:', 'let:', 'cuts:', 'size:', 'at:', 'corners:'],
  ...[
    '- hole: a',
    '- row: b',
    '- slot: c',
    '- notch: d',
    'on: top',
    'left: center',
    'toward: right',
    'make: 2',
  ],
  ...[
    'outline:',
    'pins:',
    'joints:',
    'for: axle',
    'fit: push',
    'grid: a',
    'mirrored: true',
    '<<: *a',
    'null',
  ],
  ...[
    'outline: [{ to: [0, 0] }, { to: [3, 0] }, { arc: [0, 2], bend: 40 }]',
    '- { to: [1, 2], round: 1/8 }',
    '- { arc: [0, 1], tangent: true }',
    '- { arc: [2, 0], radius: 9, turn: left }',
    '- { arc: [2, 0], through: [1, 1] }',
    '- { curve: [[1, 1], [2, 0], [3, 1]] }',
    'symmetric: left-right',
    'taper: { left: 2, angle: 6 }',
    'round: 2 1/4',
    'inside: 1/2',
    'ends: round',
    'sides: { left: nose }',
  ],
  ...[
    'lean: { toward: right, angle: 8 }',
    'lean: [{ toward: left, angle: 59 }, { toward: top, angle: 59 }]',
    'counterbore: 1/2 x 3/16',
    'countersink: { diameter: 3/8, angle: 90 }',
    'bit: { point: twist, angle: 135 }',
    'bit: brad',
    'depth: 1/8',
    'angle: 81',
    'transfer: mark-out',
    'wrap: net',
    'measured: 6 x 4 x 1',
    'projection: first',
  ],
  ...[
    '- { hole: , at: { from: a, right: 1 }, diameter: 1/8 }',
    '- { hole: , at: { concentric: top-left }, for: axle, fit: turning }',
    '- { hole-circle: c, at: center, circle: 1, count: 6, diameter: 1/8 }',
    '- { grid: g, at: center, spacing: 1/2, count: 3 x 2, diameter: 1/8 }',
    '- { row: r, at: { left: 1, top: 1 }, last: { right: 1 }, count: 4, diameter: 1/8 }',
    '- { cut-out: w, at: center, size: 1 x 1/2, corners: 1/8 }',
    '- { cut-out: v, outline: [{ to: [1, 1] }, { to: [2, 1] }, { to: [1, 2] }] }',
    'on: [front, back]',
    'angle: 30',
    'confirmed: [gauge, side-frame.step]',
    'arm: 7 x 1 x plank',
    '[0, 0]',
    'oak-plank',
  ],
  ...[
    '1',
    '0',
    '-1',
    '2 1/2',
    '1-3/16',
    '5/8"',
    '1\' 4 1/2"',
    '12.5 mm',
    '1e999',
    '~',
    '~ 3/8',
    'unknown',
    ' x ',
  ],
  ...[
    'gauge / 2',
    '((((',
    '))))',
    'min(1, 2)',
    '1/0',
    '9'.repeat(40),
    '×',
    '½',
    '.inf',
    '.nan',
    '0x1F',
    'yes',
  ],
  ...[
    '{',
    '}',
    '[',
    ']',
    ',',
    ':',
    ': ',
    '- ',
    '-',
    '? ',
    '#',
    ' #4',
    '"',
    "'",
    '|\n',
    '>\n',
    '\n',
    '\r\n',
    '\r',
  ],
  ...[
    '&a ',
    '*a',
    '!!str ',
    '!foo ',
    '!!binary ',
    '%YAML 1.1\n',
    '---\n',
    '...\n',
    '\t',
    '    ',
    '@',
    '`',
    '\\',
  ],
  ...[
    '\0',
    '\u0007',
    '\u001b[31m',
    '\u0085',
    '\u200b',
    '\u202e',
    '\u2028',
    '\ufeff',
    '\ufffe',
    '\ud800',
    '😀',
    'é',
  ],
  ...[
    '__proto__: 1',
    'constructor: 1',
    '"\\u0000"',
    '"\\ud800"',
    '"\\x41"',
    `${'[ '.repeat(60)}`,
    'k: '.repeat(20),
  ],
]

/** A word put in the place of a value. */
const valueReplaced: Edit = (bytes, random) => {
  const text = new TextDecoder().decode(bytes)
  const colons = [...text.matchAll(/: /g)]
  const colon = colons[below(Math.max(1, colons.length), random)]
  if (!colon) return bytes
  const from = colon.index + 2
  const end = /[,}\n]/.exec(text.slice(from))?.index ?? 0
  const put = new TextDecoder().decode(word(random))
  return new TextEncoder().encode(`${text.slice(0, from)}${put}${text.slice(from + end)}`)
}

const edits: readonly Edit[] = [
  // a byte flipped
  (bytes, random) => {
    const changed = bytes.slice()
    if (changed.length > 0) changed[below(changed.length, random)]! ^= 1 << below(8, random)
    return changed
  },
  // a stretch left out
  (bytes, random) => {
    const [from, to] = stretch(bytes, random)
    return joined(bytes.subarray(0, from), bytes.subarray(to))
  },
  // a stretch doubled, in its place or elsewhere
  (bytes, random) => {
    const [from, to] = stretch(bytes, random)
    const at = random() < 0.5 ? to : below(bytes.length + 1, random)
    return joined(bytes.subarray(0, at), bytes.subarray(from, to), bytes.subarray(at))
  },
  // a word put in
  (bytes, random) => {
    const at = below(bytes.length + 1, random)
    return joined(bytes.subarray(0, at), word(random), bytes.subarray(at))
  },
  // a line moved
  (bytes, random) => {
    const lines = new TextDecoder().decode(bytes).split('\n')
    const [line] = lines.splice(below(lines.length, random), 1)
    lines.splice(below(lines.length + 1, random), 0, `${' '.repeat(below(8, random))}${line?.trimStart()}`)
    return new TextEncoder().encode(lines.join('\n'))
  },
  // cut off
  (bytes, random) => bytes.subarray(0, below(bytes.length + 1, random)),
]

/** A text with one random edit, or a few; values are changed most, since they leave the file readable. */
export function mutate(text: string, random: Random): Uint8Array {
  let bytes: Uint8Array = new TextEncoder().encode(text)
  do {
    const edit = random() < 0.4 ? valueReplaced : edits[below(edits.length, random)]!
    bytes = edit(bytes, random)
  } while (random() < 0.5)
  return bytes
}

function below(end: number, random: Random): number {
  return Math.floor(random() * end)
}

/** Mostly short, now and then anything. */
function stretch(bytes: Uint8Array, random: Random): readonly [number, number] {
  const from = below(bytes.length + 1, random)
  const longest = random() < 0.9 ? 40 : bytes.length
  return [from, Math.min(bytes.length, from + below(longest + 1, random))]
}

function word(random: Random): Uint8Array {
  return new TextEncoder().encode(tokens[below(tokens.length, random)]!)
}

function joined(...pieces: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(pieces.reduce((sum, piece) => sum + piece.length, 0))
  let at = 0
  for (const piece of pieces) {
    whole.set(piece, at)
    at += piece.length
  }
  return whole
}
