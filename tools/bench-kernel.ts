/**
 * The kernel's booleans beside other libraries: same outlines, one run, warm medians in milliseconds.
 *
 *   npx tsx tools/bench-kernel.ts [--quick]
 *
 * A ratio is the other's time over ours: above 1 the kernel is faster. @flatten-js/core keeps arcs as we do;
 * clipper2-wasm gets chords within 0.005 mm, made before the clock starts, and its results are not made into
 * arcs again.
 */
import { readFileSync } from 'node:fs'
import { cpus } from 'node:os'
import Flatten from '@flatten-js/core'
import { union } from '../src/geometry/boolean/boolean.ts'
import type { Contour, Region } from '../src/geometry/shape/contour.ts'
import { shift } from '../src/geometry/shape/matrix.ts'
import { startAngle, sweep } from '../src/geometry/shape/segment.ts'
import { transformRegion } from '../src/geometry/shape/transform.ts'
import { printable } from '../src/number/tolerance.ts'
import { loadClipper } from '../tests/geometry/boolean/clipper.ts'
import { comb } from '../tests/geometry/generate/comb.ts'
import { gear } from '../tests/geometry/generate/gear.ts'
import { randomFrom } from '../tests/geometry/generate/random.ts'
import { star } from '../tests/geometry/generate/star.ts'

const quick = process.argv.includes('--quick')
// before anything else is loaded, so that the peak is our own
if (!quick) {
  const first = gear(25_000)
  const second = transformRegion(first, shift(7.3, 3.1))
  const megabytes = () => Math.round(process.resourceUsage().maxRSS / 1024)
  const before = megabytes()
  union([first], [second])
  console.log(
    `union of 100,000 and 100,000 segments: at most ${megabytes()} MB in use, ${before} MB before it`,
  )
}
const clipper = await loadClipper()
const version = (name: string) =>
  JSON.parse(readFileSync(`node_modules/${name}/package.json`, 'utf8')).version

const random = randomFrom(1)
const spikes = Array.from({ length: 100_000 }, () => 40 * random())
const shapes: Record<string, (size: number) => Region> = {
  gear: size => gear(size / 4),
  comb: size => comb(Math.round((size - 2) / 4), 40),
  // corners about 3 mm apart, spikes of up to 40 mm: each crosses some tens of the other's
  'random star': size => star(size, i => size / 2 + spikes[i]!),
}
const sizes = quick ? [100, 1000] : [100, 1000, 10_000, 100_000]

/** The median time of warm runs; of a single one where that takes longer than ten seconds. */
function time(run: () => unknown): number {
  const started = performance.now()
  run()
  const once = performance.now() - started
  if (once > 10_000) return once
  const times: number[] = []
  const until = performance.now() + 1500
  do {
    const from = performance.now()
    run()
    times.push(performance.now() - from)
  } while (performance.now() < until && times.length < 400)
  const warm = times.slice(Math.floor(times.length / 3)).sort((a, b) => a - b)
  return warm[Math.floor(warm.length / 2)]!
}

console.log(
  `${cpus()[0]?.model.trim()}, node ${process.version}, @flatten-js/core ${version('@flatten-js/core')}, clipper2-wasm ${version('clipper2-wasm')}`,
)
console.log('union with a copy shifted by (7.3, 3.1)')
console.log('shape        segments    ours ms   clipper2-wasm ms  ratio   flatten-js ms  ratio   growth')
for (const [name, make] of Object.entries(shapes)) {
  let before = 0
  for (const size of sizes) {
    const first = make(size)
    const second = transformRegion(first, shift(7.3, 3.1))
    const ours = time(() => {
      const outcome = union([first], [second])
      if (!outcome.ok) throw new Error(outcome.fault.reason)
    })
    const a = clipper.paths([first], printable)
    const b = clipper.paths([second], printable)
    const theirs = time(() => clipper.module.UnionD(a, b, clipper.module.FillRule.NonZero, 6).delete())
    a.delete()
    b.delete()
    const flatten =
      size <= 1000 ? time(() => Flatten.BooleanOperations.unify(face(first), face(second))) : undefined
    // twice the segments are looked at: the size is that of one operand
    const growth = before === 0 ? '' : Math.log10(ours / before).toFixed(2)
    before = ours
    console.log(
      [
        name.padEnd(12),
        String(first.outer.segments.length).padStart(8),
        ours.toFixed(3).padStart(10),
        theirs.toFixed(3).padStart(18),
        (theirs / ours).toFixed(2).padStart(6),
        (flatten?.toFixed(1) ?? '–').padStart(15),
        (flatten === undefined ? '–' : (flatten / ours).toFixed(0)).padStart(6),
        growth.padStart(8),
      ].join(' '),
    )
  }
}

function face(region: Region): Flatten.Polygon {
  const polygon = new Flatten.Polygon()
  polygon.addFace(flat(region.outer))
  return polygon
}

function flat(contour: Contour) {
  return contour.segments.map(s => {
    if (s.kind === 'line') {
      return new Flatten.Segment(new Flatten.Point(s.from.x, s.from.y), new Flatten.Point(s.to.x, s.to.y))
    }
    const start = startAngle(s)
    const centre = new Flatten.Point(s.centre.x, s.centre.y)
    return new Flatten.Arc(centre, s.radius, start, start + sweep(s), s.turn === 1)
  })
}
