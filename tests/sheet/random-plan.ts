import fc from 'fast-check'

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

const hole = fc
  .tuple(onFront, mm(0.5, 20), fc.boolean())
  .map(([place, diameter, stopped]) => `${place}, diameter: ${diameter}${stopped ? ', depth: 3' : ''}`)

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

const elsewhere = fc
  .tuple(at(['left', 'right'], ['front', 'back'], 20), fc.constantFrom('top', 'bottom'))
  .map(([place, on]) => `on: ${on}, ${place}, diameter: 2`)

const cut = fc.oneof(
  { weight: 4, arbitrary: hole.map(body => `hole: h#, ${body}`) },
  { weight: 2, arbitrary: row.map(body => `row: r#, ${body}`) },
  { weight: 2, arbitrary: slot.map(body => `slot: s#, ${body}`) },
  { weight: 2, arbitrary: notch.map(body => `notch: n#, ${body}`) },
  elsewhere.map(body => `hole: e#, ${body}`),
  fc.constant('hole: u#, diameter: 3'),
)

const corners = fc.oneof(
  fc.constant(''),
  mm(0.5, 3.9).map(radius => `    corners: ${radius}\n`),
  mm(0.5, 3.9).map(size => `    corners: { top-left: ${size}, bottom-right: { chamfer: ${size} } }\n`),
)

/** A plan of one part with cuts anywhere on it, past its edges and over each other too. */
export const randomPlan: fc.Arbitrary<string> = fc
  .record({
    id,
    length: mm(8, 300),
    width: mm(8, 200),
    thickness: mm(2, 40),
    corners,
    cuts: fc.array(cut, { maxLength: 12 }),
    faceEdge: fc.constantFrom('bottom', 'top'),
    referenceEnd: fc.constantFrom('left', 'right'),
    units: fc.constantFrom('inch', 'mm'),
  })
  .map(({ id, length, width, thickness, corners, cuts, faceEdge, referenceEnd, units }) => {
    const lines = cuts.map((body, i) => `      - { ${inMillimetres(body.replace('#', `${i}`))} }\n`)
    return `paperjig: 1
title: Random
units: ${units}
parts:
  part-${id}:
    make: 2
    mirrored: true
    size: ${length} mm x ${width} mm x ${thickness} mm
    face-edge: ${faceEdge}
    reference-end: ${referenceEnd}
${corners.replaceAll(/(\d+\.\d+)/g, '$1 mm')}${lines.length > 0 ? '    cuts:\n' : ''}${lines.join('')}`
  })

/** Sizes get a unit mark, so that the plan's units change what is shown and nothing else. */
function inMillimetres(body: string): string {
  return body.replaceAll(/(\d+\.\d+)/g, '$1 mm').replaceAll(/(depth|diameter): (\d+)(?=$|,)/g, '$1: $2 mm')
}
