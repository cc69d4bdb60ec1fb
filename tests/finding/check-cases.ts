import type { CheckFacts } from '../../src/finding/check-facts.ts'
import type { Place } from '../../src/finding/finding.ts'
import type { Case } from './sentence-case.ts'

const mm = (value: number) => ({ value, unit: 'mm' as const })
const count = (value: number) => ({ value, unit: 'count' as const })
const degree = (value: number) => ({ value, unit: 'degree' as const })
const peg: Place = { part: 'beam', feature: 'peg', side: 'top' }
const post: Place = { part: 'post', feature: 'low', side: 'front' }
const beam: Place = { part: 'beam' }
const low: Place = { part: 'beam', feature: 'low', side: 'front', at: { face: 'front', x: 25.4, y: 12.7 } }
const deep = {
  end: 'left',
  fromEnd: mm(25.4),
  edge: 'bottom',
  fromEdge: mm(12.7),
  fromFront: mm(6.35),
}

/** One finding of every rule of the check and what it says; a rule that is missing here fails the type check. */
export const checkCases: { readonly [R in keyof CheckFacts]: Case<R> } = {
  'position-missing': {
    facts: { what: 'hole', wanted: 'left or right, and one from bottom or top' },
    places: [peg],
    says: 'hole peg of beam has no place on the top; it wants a distance from left or right, and one from bottom or top',
  },
  'radius-missing': {
    facts: { what: 'part', wanted: 'radius of the top-left corner' },
    places: [beam],
    says: 'the drawing does not give the radius of the top-left corner of part beam',
  },
  'diameter-missing': {
    facts: { what: 'hole', wanted: 'diameter' },
    places: [peg],
    says: 'the drawing does not give the diameter of hole peg of beam',
  },
  'size-missing': {
    facts: { what: 'slot', wanted: 'depth' },
    places: [peg],
    says: 'the drawing does not give the depth of slot peg of beam',
  },
  'scaled-size': {
    facts: { written: '~ 3/8', confirm: 'beam.peg' },
    places: [peg],
    measured: mm(9.525),
    says: '"~ 3/8" was scaled off the drawing, 3/8" (9.53 mm); ask for it or measure the thing itself, then take the ~ away or list beam.peg under confirmed',
  },
  'outline-open': {
    facts: { what: 'part', edges: 'edge 1' },
    places: [beam],
    measured: mm(3.175),
    says: 'the outline of part beam does not close: its two halves miss each other by 1/8" (3.18 mm); begin and end the half on the same axis',
  },
  'outline-crossing': {
    facts: { what: 'cut-out', edges: 'edge 1 and foot', left: mm(25.4), bottom: mm(12.7) },
    places: [peg],
    says: 'the outline of cut-out peg of beam crosses itself: edge 1 and foot, 1" (25.4 mm) from the left and 1/2" (12.7 mm) from the bottom; look at the order of the points and the turn of the arcs',
  },
  'outline-doubled': {
    facts: { what: 'part', edges: 'edge 1 and edge 2' },
    places: [beam],
    says: 'the outline of part beam runs back over itself: edge 1 and edge 2; take one of the two away',
  },
  'outline-no-length': {
    facts: { what: 'part', edges: 'edge 3' },
    places: [beam],
    says: 'the outline of part beam has a step that leads to where it begins: edge 3; take it away or give it its size',
  },
  'size-differs': {
    facts: { direction: 'length', stated: mm(25.4), drawn: mm(38.1) },
    places: [beam],
    says: 'the length of the outline comes to 1 1/2" (38.1 mm), and the size beside it says 1" (25.4 mm); one of them is wrong',
  },
  'taper-disagrees': {
    facts: { drawnAngle: degree(14.0362434679), statedAngle: degree(12), widthByAngle: mm(25.4) },
    places: [beam],
    says: 'the two ends make an angle of 14.04°, and the drawing says 12°; by that angle the narrow end is 1" (25.4 mm) wide; find out which of them is right',
  },
  'outside-part': {
    facts: { what: 'slot', beyond: 'right end' },
    places: [peg],
    measured: mm(3.175),
    says: 'slot peg of beam goes 1/8" (3.18 mm) past the right end of the part',
  },
  'features-meet': {
    facts: { what: 'hole', other: 'slot', how: 'overlaps', count: count(2), names: 'peg, mouth' },
    places: [peg, { part: 'beam', feature: 'mouth' }],
    measured: mm(3.175),
    says: 'hole peg of beam overlaps slot mouth by 1/8" (3.18 mm); move one of them, or make one cut of the two',
  },
  'hole-near-edge': {
    facts: { what: 'hole', edge: 'left', count: count(3) },
    places: [peg],
    severity: 'warning',
    measured: mm(3.175),
    limit: mm(6.35),
    says: 'hole peg of beam, as 2 more of its row, leaves 1/8" (3.18 mm) of wood to the left, where 1/4" (6.35 mm) is wanted; the edge may break',
  },
  'wall-too-thin': {
    facts: { what: 'hole', other: 'hole', count: count(1) },
    places: [peg, { part: 'beam', feature: 'pin' }],
    measured: mm(1.5875),
    limit: mm(6.35),
    says: 'there is 1/16" (1.59 mm) of wood between hole peg of beam and hole pin, where 1/4" (6.35 mm) is wanted; the wall will break',
  },
  'neck-too-narrow': {
    facts: { grain: 'across', left: mm(25.4), bottom: mm(50.8) },
    places: [beam],
    severity: 'warning',
    measured: mm(4.7625),
    limit: mm(6.35),
    says: 'part beam is 3/16" (4.76 mm) wide 1" (25.4 mm) from the left and 2" (50.8 mm) from the bottom, across the grain (short grain), where 1/4" (6.35 mm) is wanted; the neck may break',
  },
  'too-deep': {
    facts: { what: 'hole', depth: mm(9.525), available: mm(12.7), point: mm(1.5875) },
    places: [peg],
    severity: 'warning',
    measured: mm(1.5875 / 2),
    limit: mm(1.5875),
    says: 'hole peg of beam is 3/8" (9.53 mm) deep in 1/2" (12.7 mm) of wood, and the point of the bit stands 1/16" (1.59 mm) further: 1/32" (0.79 mm) is left under it, where 1/16" (1.59 mm) is wanted',
  },
  'entry-hole': {
    facts: { diameter: mm(6.35) },
    places: [peg],
    measured: mm(3.175),
    says: 'the entry hole of cut-out peg of beam, 1/4" (6.35 mm) wide, goes 1/8" (3.18 mm) past the line',
  },
  'holes-meet-inside': {
    facts: { ...deep, count: count(2) },
    places: [peg, low],
    severity: 'error',
    measured: mm(1.5875),
    says: 'hole peg of beam meets hole low inside the wood, and so in 2 places, 1" (25.4 mm) from the left, 1/2" (12.7 mm) from the bottom and 1/4" (6.35 mm) from the front; they reach 1/16" (1.59 mm) into each other: move one of them, or make it less deep',
  },
  'cuts-meet-inside': {
    facts: { ...deep, what: 'slot', other: 'groove', count: count(1) },
    places: [peg, low],
    severity: 'note',
    measured: mm(1.5875),
    says: 'slot peg of beam meets groove low inside the wood, 1" (25.4 mm) from the left, 1/2" (12.7 mm) from the bottom and 1/4" (6.35 mm) from the front; they reach 1/16" (1.59 mm) into each other: make one of them less deep, or mitre what goes in',
  },
  'wall-inside': {
    facts: { ...deep, what: 'hole', other: 'hole', between: 'crosswise', count: count(1) },
    places: [peg, low],
    severity: 'error',
    measured: mm(1.5875 / 2),
    limit: mm(1.5875),
    says: 'there is 1/32" (0.79 mm) of wood between hole peg of beam and hole low where they pass crosswise, 1" (25.4 mm) from the left, 1/2" (12.7 mm) from the bottom and 1/4" (6.35 mm) from the front, where 1/16" (1.59 mm) is wanted; the wall will break',
  },
  'hole-comes-out': {
    facts: { ...deep, into: 'left', rim: 'part', count: count(1) },
    places: [peg],
    severity: 'error',
    measured: mm(1.5875),
    says: 'hole peg of beam comes out at the left, 1/16" (1.59 mm) beyond the wood, with part of its rim, so that the bit wanders, 1" (25.4 mm) from the left, 1/2" (12.7 mm) from the bottom and 1/4" (6.35 mm) from the front',
  },
  'exit-on-feature': {
    facts: { ...deep, other: 'slot', face: 'back', count: count(1) },
    places: [peg, low],
    severity: 'error',
    measured: mm(1.5875),
    says: 'hole peg of beam comes out of the back where slot low is, 1" (25.4 mm) from the left, 1/2" (12.7 mm) from the bottom and 1/4" (6.35 mm) from the front; move one of them, or stop the hole',
  },
  'out-of-reach': {
    facts: { what: 'hole', why: 'in-the-way', face: 'inner', count: count(1) },
    places: [peg],
    severity: 'error',
    measured: mm(25.4),
    limit: mm(50.8),
    says: 'no straight bit reaches hole peg of beam: 1" (25.4 mm) out from its face, inner, the part’s own wood is in its way, and it is 2" (50.8 mm) to the open',
  },
  'row-off-part': {
    facts: { what: 'row', count: count(2), of: count(5), beyond: 'right' },
    places: [peg],
    measured: mm(25.4),
    says: 'row peg of beam runs off the part: 2 of its 5 holes stick out, the farthest 1" (25.4 mm) past the right; look at the spacing, the count and the first place',
  },
  'row-uneven': {
    facts: { first: mm(25.4), last: mm(23.8125), spacing: mm(20.6375), even: mm(20.240625) },
    places: [peg],
    measured: mm(1.5875),
    says: 'row peg of beam begins 1" (25.4 mm) from one end and stops 15/16" (23.81 mm) from the other, 1/16" (1.59 mm) from even; with 51/64" (20.24 mm) in place of 13/16" (20.64 mm) it would be even, and center puts it in the middle',
  },
  'bit-missing': {
    facts: { what: 'hole', nearest: mm(4.7625), difference: mm(-0.396875) },
    places: [peg],
    measured: mm(5.159375),
    says: 'the shop has no bit of 13/64" (5.16 mm) for hole peg of beam; the nearest is 3/16" (4.76 mm), 1/64" (0.4 mm) less',
  },
  'template-missing': {
    facts: { corners: 'top-left', nearest: mm(6.35), difference: mm(0.396875) },
    places: [beam],
    measured: mm(5.953125),
    says: 'the shop has no circle of 15/64" (5.95 mm) radius for the corners (top-left); the nearest is 1/4" (6.35 mm), 1/64" (0.4 mm) more',
  },
  'larger-than-stock': {
    facts: { direction: 'thickness', stock: 'plank', boards: count(2) },
    places: [beam],
    severity: 'warning',
    measured: mm(25.4),
    limit: mm(12.7),
    says: 'the thickness of part beam is 1" (25.4 mm), and plank is 1/2" (12.7 mm); glue up 2 boards, which leaves nothing for flattening',
  },
  'measured-differs': {
    facts: { direction: 'width', difference: mm(-3.175), allowed: mm(1.5875) },
    places: [beam, beam],
    severity: 'warning',
    measured: mm(38.1),
    limit: mm(41.275),
    says: 'the block of part beam measures 1 1/2" (38.1 mm) in its width, and the plan says 1 5/8" (41.28 mm): 1/8" (3.18 mm) less, where up to 1/16" (1.59 mm) is usual; measure again, or give the part the size of the block',
  },
  'small-piece': {
    facts: { parts: 'beam, wheel', count: count(2) },
    measured: mm(25.4),
    limit: mm(76.2),
    says: '2 parts are under 3" (76.2 mm) at the longest (beam, wheel); cut them from a longer piece, or by hand in a mitre box',
  },
  'pin-hole-width': {
    facts: { pin: 'axle', fault: 'tight' },
    places: [post],
    measured: mm(4.7625),
    limit: mm(6.35),
    says: 'axle does not go into hole low of post: the hole is 3/16" (4.76 mm) wide, and the pin 1/4" (6.35 mm)',
  },
  'pin-hole-depth': {
    facts: { pin: 'dowel', fault: 'shallow', length: mm(25.4) },
    places: [post],
    measured: mm(22.225),
    limit: mm(25.4),
    says: 'dowel keeps the joint open: the holes together are 7/8" (22.23 mm) deep, and the pin is 1" (25.4 mm) long',
  },
  'pin-holes-apart': {
    facts: { pin: 'dowel', from: 'high', one: mm(25.4), another: mm(26.9875) },
    places: [post, post, { part: 'rail', piece: 'rail/1', feature: 'low' }],
    measured: mm(1.5875),
    limit: mm(0.005),
    says: 'the holes for dowel do not match: hole low of post is 1" (25.4 mm) from hole high, and in rail/1 it is 1 1/16" (26.99 mm), 1/16" (1.59 mm) off',
  },
  'pin-hole-count': {
    facts: { pin: 'dowel', count: count(4), other: count(3) },
    places: [post, { part: 'rail' }],
    says: 'dowel pins 4 holes of post to 3 of rail',
  },
  'tongue-fit': {
    facts: { tongue: 'partition', direction: 'thickness', fault: 'tight', room: mm(-1.5875) },
    places: [{ part: 'floor', feature: 'mouth' }],
    measured: mm(4.7625),
    limit: mm(6.35),
    says: 'partition does not go into opening mouth of floor: the opening is 3/16" (4.76 mm), and the thickness with its fit 1/4" (6.35 mm)',
  },
  'joined-twice': {
    facts: {},
    places: [post, post],
    says: 'opening low of post is in two joints; one of them is meant for another',
  },
  'name-unused': {
    facts: { kind: 'let', name: 'gauge' },
    says: 'nothing uses the size "gauge"; use it, or take it away',
  },
  'label-twice': {
    facts: { label: 'Plank' },
    places: [beam, post],
    says: 'two parts are labelled "Plank"; give each a label of its own',
  },
}
