import fc from 'fast-check'
import { edgeWork, faceWork, type Rectangle } from './random-work.ts'

const mm = (min: number, max: number): fc.Arbitrary<string> =>
  fc.double({ min, max, noNaN: true }).map(value => value.toFixed(3))

const id = fc.integer({ min: 0, max: 9999 })

const at = (along: readonly string[], across: readonly string[], reach: number): fc.Arbitrary<string> =>
  fc
    .tuple(
      fc.constantFrom(...along),
      fc.oneof({ weight: 4, arbitrary: mm(0, reach) }, fc.constant('center')),
      fc.constantFrom(...across),
      fc.oneof({ weight: 4, arbitrary: mm(0, reach) }, fc.constant('center')),
    )
    .map(([a, x, b, y]) => `at: { ${a}: ${x}, ${b}: ${y} }`)

const onFront = at(['left', 'right'], ['bottom', 'top'], 150)

/** Decimals are lengths here, so an angle has none. */
const degrees = fc.integer({ min: 1, max: 25 })

const lean = fc
  .tuple(fc.constantFrom('left', 'right'), degrees, fc.constantFrom('top', 'bottom'), degrees, fc.boolean())
  .map(([x, a, y, b, both]) => {
    const first = `{ toward: ${x}, angle: ${a} }`
    return `, lean: ${both ? `[${first}, { toward: ${y}, angle: ${b} }]` : first}`
  })

const hole = fc
  .tuple(
    onFront,
    mm(0.5, 20),
    fc.boolean(),
    fc.oneof({ weight: 2, arbitrary: fc.constant('') }, lean),
    fc.oneof({ weight: 2, arbitrary: fc.constant('') }, fc.constantFrom(', countersink: ', ', bit: brad')),
  )
  .map(([place, diameter, stopped, leaning, more]) => {
    const wider = more.endsWith(': ') ? (Number(diameter) + 2).toFixed(3) : ''
    return `${place}, diameter: ${diameter}${stopped ? ', depth: 3' : ''}${leaning}${more}${wider}`
  })

const row = fc
  .tuple(
    onFront,
    fc.constantFrom('left', 'right', 'top', 'bottom'),
    mm(1, 30),
    fc.integer({ min: 1, max: 9 }),
    mm(0.5, 8),
  )
  .map(
    ([place, toward, spacing, count, diameter]) =>
      `${place}, toward: ${toward}, spacing: ${spacing}, count: ${count}, diameter: ${diameter}`,
  )

const slot = fc
  .tuple(onFront, mm(6, 60), mm(1, 6), fc.boolean(), fc.boolean())
  .map(
    ([place, along, across, round, stopped]) =>
      `${place}, size: ${along} x ${across}${round ? ', ends: round' : ''}${stopped ? ', depth: 2' : ''}`,
  )

const notch = fc
  .tuple(fc.constantFrom('bottom', 'top', 'left', 'right'), mm(0, 100), mm(2, 40), mm(1, 20))
  .map(([on, from, along, into]) => {
    const side = on === 'bottom' || on === 'top' ? 'left' : 'bottom'
    return `on: ${on}, at: { ${side}: ${from} }, size: ${along} x ${into}`
  })

const grid = fc
  .tuple(onFront, mm(2, 20), fc.integer({ min: 1, max: 6 }), fc.integer({ min: 1, max: 6 }), mm(0.5, 4))
  .map(
    ([place, spacing, along, across, diameter]) =>
      `${place}, spacing: ${spacing}, count: ${along} x ${across}, diameter: ${diameter}`,
  )

const holeCircle = fc
  .tuple(onFront, mm(4, 60), fc.integer({ min: 1, max: 12 }), mm(0.5, 6))
  .map(
    ([place, circle, count, diameter]) =>
      `${place}, circle: ${circle}, count: ${count}, diameter: ${diameter}`,
  )

const cutOut = fc
  .tuple(onFront, mm(4, 60), mm(4, 60), fc.constantFrom('size', 'round', 'bent'))
  .map(([place, along, across, kind]) => {
    if (kind === 'size') return `${place}, size: ${along} x ${across}`
    if (kind === 'round') return `${place}, round: ${along}`
    // the middle of the rectangle round this bow lies outside it
    const [l, a] = [Number(along), Number(across)]
    const points = [
      [0, 0],
      [l, 0],
      [l, a],
      [l * 0.9, a],
      [l * 0.9, a * 0.1],
      [0, a * 0.1],
    ]
    const steps = points.map(([x, y]) => `{ to: [${x!.toFixed(3)}, ${y!.toFixed(3)}] }`)
    return `${place}, outline: [ ${steps.join(', ')} ]`
  })

const elsewhere = fc
  .tuple(at(['left', 'right'], ['front', 'back'], 20), fc.constantFrom('top', 'bottom'))
  .map(([place, on]) => `on: ${on}, ${place}, diameter: 2`)

const cut = fc.oneof(
  { weight: 4, arbitrary: hole.map(body => `hole: h#, ${body}`) },
  { weight: 2, arbitrary: row.map(body => `row: r#, ${body}`) },
  { weight: 2, arbitrary: slot.map(body => `slot: s#, ${body}`) },
  { weight: 1, arbitrary: grid.map(body => `grid: g#, ${body}`) },
  { weight: 1, arbitrary: holeCircle.map(body => `hole-circle: c#, ${body}`) },
  { weight: 2, arbitrary: cutOut.map(body => `cut-out: o#, ${body}`) },
  { weight: 2, arbitrary: notch.map(body => `notch: n#, ${body}`) },
  elsewhere.map(body => `hole: e#, ${body}`),
  fc.constant('hole: u#, diameter: 3'),
  { weight: 3, arbitrary: faceWork },
)

type Shape = { readonly body: string; readonly rectangle?: Rectangle }

const corners = fc.oneof(
  fc.constant(''),
  mm(0.5, 3.9).map(radius => `    corners: ${radius}\n`),
  mm(0.5, 3.9).map(size => `    corners: { top-left: ${size}, bottom-right: { chamfer: ${size} } }\n`),
)

/** A rectangle, tiny or large, or long and thin. */
const rectangle = fc
  .tuple(
    fc.oneof(
      { weight: 4, arbitrary: fc.tuple(mm(8, 300), mm(8, 200)) },
      fc.tuple(mm(2, 12), mm(2, 12)),
      fc.tuple(mm(300, 900), mm(3, 12)),
    ),
    mm(2, 40),
    corners,
  )
  .map(([[length, width], thickness, corners]): Shape => {
    const least = Math.min(Number(length), Number(width))
    const easing = least > 8 ? corners : ''
    return {
      body: `    size: ${length} x ${width} x ${thickness}\n${easing}`,
      rectangle: { least, thickness: Number(thickness) },
    }
  })

/** A bow: an arc over a straight foot, its ends slanting, so that no edge mark may count on a corner. */
const bow = fc
  .tuple(mm(30, 300), mm(10, 80), mm(2, 9), fc.integer({ min: 10, max: 120 }), mm(2, 40))
  .map(([length, width, slant, bend, thickness]): Shape => {
    const far = (Number(length) - Number(slant)).toFixed(3)
    const steps = [
      '{ to: [0.0, 0.0] }',
      `{ to: [${length}, 0.0] }`,
      `{ to: [${far}, ${width}] }`,
      `{ arc: [${slant}, ${width}], bend: ${bend} }`,
    ]
    return { body: `    thickness: ${thickness}\n    outline: [ ${steps.join(', ')} ]\n` }
  })

const disc = fc.tuple(mm(10, 200), fc.boolean(), mm(2, 40)).map(([round, ring, thickness]): Shape => {
  const inside = ring ? `    inside: ${(Number(round) * 0.7).toFixed(3)}\n` : ''
  return { body: `    thickness: ${thickness}\n    round: ${round}\n${inside}` }
})

/** A shape, and what is worked along its edges where it has four straight ones. */
const shape = fc
  .oneof({ weight: 6, arbitrary: rectangle }, { weight: 2, arbitrary: bow }, disc)
  .chain(({ body, rectangle }) =>
    (rectangle === undefined
      ? fc.constant([])
      : fc.oneof(
          { weight: 2, arbitrary: fc.constant([]) },
          fc.array(edgeWork(rectangle), { minLength: 1, maxLength: 4 }),
        )
    ).map(along => ({ body, along })),
  )

/** Names of one figure or of as many letters as a plan may have, which no small part has room for. */
const name = fc.oneof(
  { weight: 4, arbitrary: id.map(number => `part-${number}`) },
  fc.integer({ min: 1, max: 64 }).map(length => 'mw'.repeat(32).slice(0, length)),
)

/** Cuts of many kinds anywhere, or very many near each other, each of its own size. */
const cuts = fc.oneof(
  { weight: 5, arbitrary: fc.array(cut, { maxLength: 12 }) },
  fc
    .tuple(fc.integer({ min: 20, max: 60 }), mm(2, 9), fc.integer({ min: 2, max: 12 }))
    .map(([count, pitch, each]) =>
      Array.from({ length: count }, (_, i) => {
        const at = (steps: number) => (4 + steps * Number(pitch)).toFixed(3)
        return `hole: h#, at: { left: ${at(i % each)}, bottom: ${at(Math.floor(i / each))} }, diameter: ${(0.5 + i / 40).toFixed(3)}`
      }),
    ),
)

/** A plan of one part with cuts anywhere on it, past its edges and over each other too. */
export const randomPlan: fc.Arbitrary<string> = fc
  .record({
    name,
    shape,
    cuts,
    faceEdge: fc.constantFrom('bottom', 'top'),
    referenceEnd: fc.constantFrom('left', 'right'),
    units: fc.constantFrom('inch', 'mm'),
  })
  .map(({ name, shape, cuts, faceEdge, referenceEnd, units }) => {
    const lines = [...cuts, ...shape.along].map(
      (body, i) => `      - { ${inMillimetres(body.replace('#', `${i}`))} }\n`,
    )
    return `paperjig: 1
title: Random
units: ${units}
parts:
  ${name}:
    make: 2
    mirrored: true
    face-edge: ${faceEdge}
    reference-end: ${referenceEnd}
${shape.body.replaceAll(/(\d+\.\d+)/g, '$1 mm')}${lines.length > 0 ? '    cuts:\n' : ''}${lines.join('')}`
  })

/** Sizes get a unit mark, so that the plan's units change what is shown and nothing else. */
function inMillimetres(body: string): string {
  return body.replaceAll(/(\d+\.\d+)/g, '$1 mm').replaceAll(/(depth|diameter): (\d+)(?=$|,)/g, '$1: $2 mm')
}
