/** Pairs of regions made from a seed: random ones, and ones made to be as awkward as shapes can be. */
import { circle } from '../../../src/geometry/shape/circle.ts'
import type { Region } from '../../../src/geometry/shape/contour.ts'
import { compose, type Matrix, mirrorAcross, scale, shift, turn } from '../../../src/geometry/shape/matrix.ts'
import type { Point } from '../../../src/geometry/shape/point.ts'
import { polygon } from '../../../src/geometry/shape/polygon.ts'
import { rectangle, rectangleWithCorners } from '../../../src/geometry/shape/rectangle.ts'
import { slot } from '../../../src/geometry/shape/slot.ts'
import { transformRegion } from '../../../src/geometry/shape/transform.ts'
import { bowed, crescent } from '../generate/bow.ts'
import { comb } from '../generate/comb.ts'
import { gear } from '../generate/gear.ts'
import { randomLetter } from '../generate/letter.ts'
import { randomFrom } from '../generate/random.ts'
import { solid } from '../generate/solid.ts'
import { spiral } from '../generate/spiral.ts'
import { star } from '../generate/star.ts'

export type Case = {
  readonly kind: string
  readonly first: readonly Region[]
  readonly second: readonly Region[]
}

type Dice = {
  readonly random: () => number
  readonly between: (low: number, high: number) => number
  readonly whole: (low: number, high: number) => number
  readonly pick: <T>(list: readonly T[]) => T
  /** 10 to a random power: sizes of every order alike. */
  readonly decade: (low: number, high: number) => number
}

function diceFrom(random: () => number): Dice {
  const between = (low: number, high: number) => low + (high - low) * random()
  const whole = (low: number, high: number) => low + Math.floor(random() * (high - low + 1))
  return {
    random,
    between,
    whole,
    pick: list => list[whole(0, list.length - 1)]!,
    decade: (low, high) => 10 ** between(low, high),
  }
}

type Maker = (dice: Dice) => Region

const place = (d: Dice, reach = 30): Point => ({ x: d.between(-reach, reach), y: d.between(-reach, reach) })
const gridPoint = (d: Dice, reach = 6): Point => ({ x: d.whole(-reach, reach), y: d.whole(-reach, reach) })

/** Shapes on whole millimetres: edges shared, ends touching, circles tangent, all of it all the time. */
const onGrid: readonly Maker[] = [
  d => {
    const { x, y } = gridPoint(d)
    return rectangle({ left: x, bottom: y, right: x + d.whole(1, 6), top: y + d.whole(1, 6) })
  },
  d => solid(circle(gridPoint(d), d.whole(1, 5))),
  d => {
    const from = gridPoint(d)
    const [dx, dy] = d.pick([
      [1, 0],
      [0, 1],
      [3 / 5, 4 / 5],
    ] as const)
    const length = d.whole(1, 5)
    return slot(from, { x: from.x + length * dx, y: from.y + length * dy }, 2 * d.whole(1, 3))
  },
  d => {
    const { x, y } = gridPoint(d)
    const radius = d.whole(1, 2)
    const bounds = { left: x, bottom: y, right: x + d.whole(4, 8), top: y + d.whole(4, 8) }
    const made = rectangleWithCorners(bounds, { 'bottom-left': { radius }, 'top-right': { radius } })
    return made.ok ? made.value : rectangle(bounds)
  },
  d => {
    const centre = gridPoint(d)
    const radius = d.whole(2, 5)
    return { outer: circle(centre, radius), holes: [circle(centre, d.whole(1, radius - 1))] }
  },
  d => {
    const { x, y } = gridPoint(d)
    const w = d.whole(2, 6)
    return solid(
      polygon([
        { x, y },
        { x: x + w, y },
        { x: x + w, y: y + 1 },
        { x: x + 1, y: y + 1 },
        { x: x + 1, y: y + w },
        { x, y: y + w },
      ]),
    )
  },
  d => {
    const a = gridPoint(d)
    return solid(
      polygon([a, { x: a.x + d.whole(1, 6), y: a.y }, { x: a.x + d.whole(-3, 3), y: a.y + d.whole(1, 6) }]),
    )
  },
]

const anywhere: readonly Maker[] = [
  d => solid(circle(place(d), d.between(1, 40))),
  d => star(d.whole(3, 40), () => d.between(5, 40), place(d, 10)),
  d => {
    const n = d.whole(2, 12)
    const centre = place(d, 10)
    const points = Array.from({ length: n }, (_, i) => {
      const angle = (2 * Math.PI * i) / n
      const radius = n === 2 ? 20 : d.between(15, 30)
      return { x: centre.x + radius * Math.cos(angle), y: centre.y + radius * Math.sin(angle) }
    })
    return bowed(points, () =>
      n === 2 ? d.between(0.1, 12) : d.pick([0, d.between(0, 3), d.between(-2, 0)]),
    )
  },
  d => gear(d.whole(5, 24), place(d, 8)),
  d => comb(d.whole(2, 12), d.between(5, 40), place(d, 20)),
  d => spiral(d.whole(1, 9), d.between(2, 6), d.between(0.1, 0.9), place(d, 10)),
  d => slot(place(d), place(d), d.between(0.5, 20)),
  d => {
    const a = place(d)
    const b = place(d)
    const sagitta = d.between(0.5, 10)
    return crescent(a, b, sagitta, sagitta - d.decade(-5, -0.4))
  },
  d => {
    // a sliver: long and hardly wide
    const a = place(d)
    const b = place(d)
    const t = d.between(0.2, 0.8)
    const w = d.decade(-5, -1)
    const l = Math.hypot(b.x - a.x, b.y - a.y)
    const aside = { x: (-(b.y - a.y) / l) * w, y: ((b.x - a.x) / l) * w }
    return solid(polygon([a, b, { x: a.x + t * (b.x - a.x) + aside.x, y: a.y + t * (b.y - a.y) + aside.y }]))
  },
  d => {
    const centre = place(d)
    const radius = d.between(5, 30)
    return { outer: circle(centre, radius), holes: [circle(centre, radius - d.decade(-4, 0.5))] }
  },
  d => d.pick(randomLetter(d.random)),
]

const any: readonly Maker[] = [...anywhere, ...onGrid]

/** Up to three letters over each other, each with all its parts. */
function letters(d: Dice): Region[] {
  return Array.from({ length: d.whole(1, 3) }, () => {
    const at = d.pick([shift(0, 0), shift(d.whole(0, 4), 0), shift(d.between(-8, 8), d.between(-8, 8))])
    return randomLetter(d.random).map(r => transformRegion(r, at))
  }).flat()
}

/** Ways to make the second shape of a pair from the first so that the two nearly or truly coincide. */
const nearly: Readonly<Record<string, (d: Dice, r: Region) => Region>> = {
  'shifted by almost nothing': (d, r) => {
    const by = d.decade(-12, -3)
    const angle = d.between(0, 2 * Math.PI)
    return transformRegion(r, shift(by * Math.cos(angle), by * Math.sin(angle)))
  },
  'shifted along an axis by almost nothing': (d, r) => {
    const by = d.decade(-12, -3)
    return transformRegion(r, d.pick([shift(by, 0), shift(0, by), shift(-by, 0)]))
  },
  'turned by almost nothing': (d, r) => transformRegion(r, turn(d.decade(-13, -4))),
  'larger by almost nothing': (d, r) => transformRegion(r, scale(1 + d.decade(-12, -4))),
  'turned about a corner': (d, r) => {
    const { x, y } = d.pick(r.outer.segments).from
    const about = compose(
      compose(shift(-x, -y), turn(d.pick([d.between(0, 6), d.decade(-9, -2)]))),
      shift(x, y),
    )
    return transformRegion(r, about)
  },
  'slid along an edge': (d, r) => {
    const s = d.pick(r.outer.segments)
    const t = d.between(0, 1)
    return transformRegion(r, shift(t * (s.to.x - s.from.x), t * (s.to.y - s.from.y)))
  },
  'moved from corner to corner': (d, r) => {
    const p = d.pick(r.outer.segments).from
    const q = d.pick(r.outer.segments).from
    return transformRegion(r, shift(q.x - p.x, q.y - p.y))
  },
  mirrored: (d, r) => transformRegion(r, mirrorAcross(d.pick(r.outer.segments).from.x)),
  same: (_, r) => r,
}

/** Two circles, or a circle and a square, that touch but for a hair. */
function tangent(d: Dice): [Region, Region] {
  const centre = place(d)
  const radius = d.between(1, 50)
  const angle = d.between(0, 2 * Math.PI)
  const hair = d.pick([0, 0, d.decade(-13, -3), -d.decade(-13, -3)])
  const along = (reach: number): Point => ({
    x: centre.x + reach * Math.cos(angle),
    y: centre.y + reach * Math.sin(angle),
  })
  const first = solid(circle(centre, radius))
  const other = d.pick([d.between(0.5, 50), radius * (1 - d.decade(-6, -0.5))])
  const turned = (r: Region, p: Point, by: number): Region =>
    transformRegion(r, compose(compose(shift(-p.x, -p.y), turn(by)), shift(p.x, p.y)))
  switch (d.whole(0, 2)) {
    case 0: {
      const c = along(radius + other + hair)
      return [first, turned(solid(circle(c, other)), c, d.between(0, 6))]
    }
    case 1: {
      const c = along(Math.abs(radius - other) + hair)
      return [
        radius > other ? first : solid(circle(centre, radius)),
        turned(solid(circle(c, other)), c, d.between(0, 6)),
      ]
    }
    default: {
      const box = rectangle({
        left: radius + hair,
        bottom: -other,
        right: radius + 10,
        top: d.between(-0.9, 1) * other,
      })
      return [first, transformRegion(transformRegion(box, turn(angle)), shift(centre.x, centre.y))]
    }
  }
}

/** The same two shapes somewhere else: far away, turned, larger or smaller. */
function carry(d: Dice, made: Case): Case {
  const matrix: Matrix = compose(
    compose(scale(d.decade(-1, 1.5)), turn(d.between(0, 6))),
    shift(d.between(-1e4, 1e4), d.between(-1e4, 1e4)),
  )
  const move = (r: Region) => transformRegion(r, matrix)
  return { kind: `${made.kind}, carried away`, first: made.first.map(move), second: made.second.map(move) }
}

export function randomCase(seed: number): Case {
  const d = diceFrom(randomFrom(seed))
  const made = (): Case => {
    const which = d.between(0, 1)
    if (which < 0.25) {
      return { kind: 'on a grid', first: several(d, onGrid, 3), second: several(d, onGrid, 3) }
    }
    if (which < 0.4) return { kind: 'anywhere', first: [d.pick(anywhere)(d)], second: [d.pick(anywhere)(d)] }
    if (which < 0.5)
      return { kind: 'several anywhere', first: several(d, any, 3), second: several(d, any, 3) }
    if (which < 0.65) {
      const [a, b] = tangent(d)
      return { kind: 'tangent', first: [a], second: [b] }
    }
    if (which < 0.75) return { kind: 'letters', first: letters(d), second: letters(d) }
    if (which < 0.8) {
      const name = d.pick(Object.keys(nearly))
      const first = randomLetter(d.random)
      // the parts go the same way: every one throws the same dice
      const again = Math.floor(d.between(0, 1e9))
      const second = first.map(r => nearly[name]!(diceFrom(randomFrom(again)), r))
      return { kind: `letter, ${name}`, first, second }
    }
    const name = d.pick(Object.keys(nearly))
    const first = d.pick(any)(d)
    return { kind: name, first: [first], second: [nearly[name]!(d, first)] }
  }
  const plain = made()
  return d.between(0, 1) < 0.2 ? carry(d, plain) : plain
}

function several(d: Dice, makers: readonly Maker[], most: number): Region[] {
  return Array.from({ length: d.whole(1, most) }, () => d.pick(makers)(d))
}
