// The keeper plate of a garden gate's latch: an outline with eased corners, a slot for the latch, two screw
// holes. What is left of the wood is measured, a template for a guide bush is made, and a drawn circle of the
// old keeper is fitted. Run it with `npx tsx examples/kernel/gate-keeper.ts`.
//
// In a project of your own: import … from 'paperjig/geometry'
import {
  chordPoints,
  circle,
  type Contour,
  difference,
  easeCorners,
  fitCircle,
  narrowestNeck,
  offsetRegions,
  type Outcome,
  polygon,
  type Region,
  regionArea,
  regionBounds,
  slot,
  thinnestWall,
} from '../../src/geometry/index.ts'

// 1. The outline, millimetres, counter-clockwise; every edge has a name that it keeps through all that follows.
const outline = polygon(
  [
    { x: 0, y: 0 },
    { x: 90, y: 0 },
    { x: 90, y: 25 },
    { x: 60, y: 40 },
    { x: 0, y: 40 },
  ],
  ['foot', 'nose', 'slope', 'head', 'back'],
)
const eased = must(easeCorners(outline, [{ radius: 6 }, { radius: 6 }, { radius: 10 }, undefined, { chamfer: 5 }]))

// 2. Everything that is bored or sawn out of it.
const holes: Region[] = [
  { outer: circle({ x: 12, y: 20 }, 2.5, 'screw'), holes: [] },
  { outer: circle({ x: 72, y: 14 }, 2.5, 'screw'), holes: [] },
  slot({ x: 30, y: 22 }, { x: 52, y: 22 }, 12, 'latch'),
]
const plate = must(difference([{ outer: eased, holes: [] }], holes))
console.log(`${plate.length} region, ${plate[0]!.holes.length} holes, ${mm(regionArea(plate[0]!))} mm²`)

// 3. Where it is weakest: between two contours, and across the plate.
const wall = thinnestWall(plate[0]!)!
console.log(`thinnest wall ${mm(wall.distance)} mm at ${place(wall.first.point)}, beside ${edgeName(wall.first)}`)
const neck = narrowestNeck(plate[0]!)
console.log(`narrowest neck ${neck === undefined ? 'none' : `${mm(neck.width)} mm at ${place(neck.at)}`}`)

// 4. A template for a guide bush of 17 mm and a bit of 12 mm is smaller all round by (17 − 12)/2.
const template = must(offsetRegions([{ outer: eased, holes: [] }], -(17 - 12) / 2))
const { left, right } = regionBounds(template[0]!)
console.log(`template ${mm(right - left)} mm long, ${arcs(template[0]!.outer)} of its edges are arcs`)

// 5. The old keeper was round: five points measured on its rim.
const rim = must(fitCircle([{ x: 1, y: 31 }, { x: 12.1, y: 38 }, { x: 25, y: 36 }, { x: 31, y: 24.1 }, { x: 27.4, y: 13 }]))
console.log(`old keeper: radius ${mm(rim.radius)} mm, worst point ${mm(rim.worst)} mm off`)

// 6. For a machine that knows no arcs: chords within 0.01 mm.
console.log(`${chordPoints(plate[0]!.outer, 0.01).length} points make the outline within 0.01 mm`)

// What cannot be done comes back as a fault with its reason, never as a wrong answer.
const tooRound = easeCorners(outline, [{ radius: 60 }])
if (!tooRound.ok) console.log(`no corner of 60: ${tooRound.fault.reason}`)

function must<T>(outcome: Outcome<T>): T {
  if (!outcome.ok) throw new Error(`${outcome.fault.operation}: ${outcome.fault.reason}`)
  return outcome.value
}

function edgeName({ contour, segment }: { contour: number; segment: number }): string {
  const contours = [plate[0]!.outer, ...plate[0]!.holes]
  return contours[contour]!.segments[segment]!.tag ?? 'an eased corner'
}

function arcs({ segments }: Contour): number {
  return segments.filter(s => s.kind === 'arc').length
}

function place({ x, y }: { x: number; y: number }): string {
  return `(${mm(x)}, ${mm(y)})`
}

function mm(value: number): string {
  return value.toFixed(2)
}
