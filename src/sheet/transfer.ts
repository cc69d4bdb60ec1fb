import type { FaceName } from '../finding/face-name.ts'
import { sayFace } from '../finding/face-name.ts'
import type { Contour } from '../geometry/shape/contour.ts'
import type { Segment } from '../geometry/shape/segment.ts'
import { isPlaced, type Placed } from '../model/feature.ts'
import { finishedOutline } from '../model/finished-outline.ts'
import type { Part, Transfer } from '../model/part.ts'
import { coincident } from '../number/tolerance.ts'
import { has } from '../workshop/bits.ts'
import type { Workshop } from '../workshop/workshop.ts'
import { chamferedIn } from './chamfered.ts'
import { isFillet, withWholeArcs } from './mark-out/arcs.ts'

/** How a part comes from paper to wood, and why, in half a line. */
export type ChosenTransfer = { readonly by: Exclude<Transfer, 'auto'>; readonly because: string }

/** More on one face that is set out by itself is quicker glued on than marked. */
const mostMarked = 8

/**
 * A template to glue on where the outline is curved, angled or full of detail, else lines marked on the wood, which on a
 * rectangle are quicker and truer; unless the plan says. Common practice, no source.
 */
export function chooseTransfer(
  part: Pick<Part, 'transfer' | 'drawn' | 'corners' | 'templateOffset'>,
  workshop: Pick<Workshop, 'circleTemplates'>,
): ChosenTransfer {
  const { transfer, drawn } = part
  if (transfer !== 'auto') return { by: transfer, because: 'the plan says so' }
  const features = drawn.features.filter(isPlaced)
  const template = (because: string): ChosenTransfer => ({ by: 'template', because })
  if (part.templateOffset !== undefined) return template('the bush of a router runs along it')
  const outline = finishedOutline(drawn).flatMap(({ outer, holes }) => [outer, ...holes])
  const cutOuts = features.flatMap(({ shape }) =>
    shape.kind === 'cut-out' ? [shape.region.outer, ...shape.region.holes] : [],
  )
  if (outline.some(contour => isCurved(contour, workshop))) return template('the outline is curved')
  const isAngled = angled(chamferedIn(part))
  if (outline.some(isAngled)) return template('an edge is not square to the others')
  if (cutOuts.some(contour => isCurved(contour, workshop))) return template('a cut-out is curved')
  if (cutOuts.some(isAngled)) return template('an edge of a cut-out is not square to the others')
  if (features.some(({ shape }) => shape.kind === 'engraved-lines')) return template('a drawing is engraved')
  const settings = new Map<FaceName, Set<string>>()
  for (const feature of features) {
    const onFace = settings.get(feature.face) ?? new Set()
    settings.set(feature.face, onFace.add(settingOf(feature)))
  }
  for (const [face, { size }] of settings) {
    if (size > mostMarked) return template(`${size} features to set out on the ${sayFace(face)}`)
  }
  const all = [...settings.values()].reduce((sum, { size }) => sum + size, 0)
  return { by: 'mark-out', because: `square, ${counted(features.length, all)}` }
}

/**
 * What the maker sets once, by a name: the fence for a row or a line of a grid, along which only the stop moves; the rest
 * by itself, and the holes of a circle too, which no fence sets.
 */
function settingOf({ id, cut, row }: Placed): string {
  return row === undefined || row.pattern === 'circle' ? id : `${cut} in line ${row.line ?? 1}`
}

function counted(features: number, settings: number): string {
  if (features === 0) return 'nothing to cut out'
  if (features > mostMarked && settings < features)
    return `${features} features in ${settings} setting${settings === 1 ? '' : 's'}`
  return `${features} feature${features === 1 ? '' : 's'}`
}

/** Whether it has an arc that no circle template draws: one that rounds no corner or end, or of a radius that the shop has none for. */
function isCurved(contour: Contour, { circleTemplates }: Pick<Workshop, 'circleTemplates'>): boolean {
  const whole = withWholeArcs(contour)
  return whole.segments.some(
    (edge, i) => edge.kind === 'arc' && !(isFillet(whole, i) && has(circleTemplates, 2 * edge.radius)),
  )
}

/** Whether it has an edge that is not square to the others; a chamfer takes no edge away from the square. */
function angled(isChamfer: (edge: Segment) => boolean): (contour: Contour) => boolean {
  return ({ segments }) =>
    segments.some(edge => {
      const [dx, dy] = [Math.abs(edge.to.x - edge.from.x), Math.abs(edge.to.y - edge.from.y)]
      return edge.kind === 'line' && Math.min(dx, dy) > coincident && !isChamfer(edge)
    })
}

/** What a sheet says of the choice: "Why a mark-out: square, 3 features." */
export function transferWords({ by, because }: ChosenTransfer): string {
  return `Why a ${by}: ${because}.`
}

/** The choice for a part of a packet; where only one of the two is asked for, every part gets that. */
export function transferOf(
  part: Part,
  { workshop, everyPart }: { readonly workshop: Workshop; readonly everyPart?: Exclude<Transfer, 'auto'> },
): ChosenTransfer {
  const chosen = chooseTransfer(part, workshop)
  return everyPart === undefined || everyPart === chosen.by
    ? chosen
    : { by: everyPart, because: 'as asked for' }
}
