import type { FindingOf } from '../../finding/finding.ts'
import { regionBounds } from '../../geometry/measure/bounds.ts'
import { isPlaced, type Placed } from '../../model/feature.ts'
import type { Fit, Target, TongueJoint } from '../../model/joint.ts'
import type { Part } from '../../model/part.ts'
import { printable } from '../../number/tolerance.ts'
import { clearance } from '../../workshop/fits.ts'
import type { Fits } from '../../workshop/workshop.ts'
import { mm, placeOfFeature, placeOfPart } from '../place.ts'
import { commonPractice, type Rule } from '../rule.ts'

/** A tongue that does not go into its slot, or rattles in it. The tongue is the real board. */
export const tongueFit: Rule<'tongue-fit'> = {
  find: ({ model, workshop: { fits } }) => {
    const parts = new Map(model.parts.map(part => [part.id, part]))
    return model.joints.flatMap(joint => (joint.kind === 'tongue' ? judge(joint, parts, fits) : []))
  },
  explanation: {
    purpose:
      'A slot is as wide as the board that goes into it is thick. When the board is planed or another stock is taken, the slot that was given as a number stays behind.',
    limit: ({ fits }, show) =>
      `no narrower than the tongue and the fit, and no wider than that or ${show(fits.machinedSlot)} over the tongue, whichever is more; an opening of at most half the thickness is a mortise for a tenon with shoulders, and left alone`,
    origin: commonPractice,
  },
}

type Direction = 'length' | 'width' | 'thickness'
type Side = { readonly direction: Direction; readonly size: number }
type Match = Side & { readonly opening: number }

function judge(
  joint: TongueJoint,
  parts: ReadonlyMap<string, Part>,
  fits: Fits,
): readonly FindingOf<'tongue-fit'>[] {
  const tongue = parts.get(joint.tongue.part)
  const into = parts.get(joint.into.part)
  const slot = into?.drawn.features.filter(isPlaced).find(({ id }) => joint.into.features.includes(id))
  if (tongue === undefined || into === undefined || slot === undefined) return []
  const match = bestMatch(sectionsOf(tongue, joint.tongue), openingOf(slot))
  if (match.some(isShouldered)) return []
  return match.flatMap(({ direction, size, opening }): FindingOf<'tongue-fit'>[] => {
    const wanted = roomFor(joint.fit, fits, size)
    if (wanted === undefined) return []
    const room = opening - size
    const fault = faultOf(room, wanted, Math.max(wanted, fits.machinedSlot))
    if (fault === undefined) return []
    return [
      {
        rule: 'tongue-fit',
        severity: fault === 'tight' ? 'error' : 'warning',
        places: [
          { ...placeOfFeature(into, slot), source: joint.source },
          placeOfFeature(into, slot),
          placeOfPart(tongue),
        ],
        measured: mm(opening),
        limit: mm(size + wanted),
        facts: { tongue: tongue.id, direction, fault, room: mm(room) },
      },
    ]
  })
}

/** A mortise is a third of the board, at most a half: then a tenon with shoulders is cut on the end that goes in. */
const shoulderedBelow = 1 / 2

function isShouldered({ direction, size, opening }: Match): boolean {
  return direction === 'thickness' && opening <= shoulderedBelow * size
}

function faultOf(room: number, wanted: number, most: number): 'tight' | 'close' | 'loose' | undefined {
  if (room < -printable) return 'tight'
  if (room < wanted - printable) return 'close'
  return room > most + printable ? 'loose' : undefined
}

/** A slot is cut to its tongue unless the plan says otherwise. */
function roomFor(fit: Fit | undefined, fits: Fits, size: number): number | undefined {
  if (fit === undefined) return 0
  if (typeof fit === 'string') return clearance(fits, fit, size)
  return fit.clearance === 'unknown' ? undefined : fit.clearance.mm
}

/** What goes in, as seen by somebody who looks into the slot: the end or edge, or any way round of a whole part. */
function sectionsOf({ length, width, thickness }: Part, { face }: Target): readonly (readonly Side[])[] {
  const l: Side = { direction: 'length', size: length.mm }
  const w: Side = { direction: 'width', size: width.mm }
  const t: Side = { direction: 'thickness', size: thickness.mm }
  switch (face) {
    case undefined:
      return [
        [w, t],
        [l, t],
        [l, w],
      ]
    case 'left':
    case 'right':
      return [[w, t]]
    case 'top':
    case 'bottom':
      return [[l, t]]
    case 'front':
    case 'back':
      return [[l, w]]
    default:
      // how much of a named edge goes in is not known, its thickness is
      return [[t]]
  }
}

/** The sides of the opening that are held against the tongue. */
function openingOf({ shape }: Placed): readonly number[] {
  switch (shape.kind) {
    case 'pocket':
      // a round end takes no corner of a tongue, so its length is not held against it
      return shape.ends === 'round' ? [shape.across.mm] : [shape.along.mm, shape.across.mm]
    case 'edge-cut':
      return [shape.along.mm]
    case 'cut-out': {
      const { left, right, bottom, top } = regionBounds(shape.region)
      return [right - left, top - bottom]
    }
    case 'groove':
      return [shape.width.mm]
    default:
      // what lies in a rebate is not held on both sides
      return []
  }
}

/** The way of putting the tongue in by which it fits best; a side without an opening of its own is left out. */
function bestMatch(sections: readonly (readonly Side[])[], openings: readonly number[]): readonly Match[] {
  const ways = sections.flatMap(sides => pairings(sides, openings))
  const misfit = (way: readonly Match[]) =>
    Math.max(...way.map(({ size, opening }) => Math.abs(opening - size)))
  return ways.reduce<readonly Match[]>(
    (best, way) => (best.length === 0 || misfit(way) < misfit(best) ? way : best),
    [],
  )
}

/** Every way of holding two sides, or one of them, against two openings, or one. */
function pairings(sides: readonly Side[], openings: readonly number[]): readonly (readonly Match[])[] {
  const [a, b = a] = sides
  const [first, second] = openings
  if (a === undefined || b === undefined || first === undefined) return []
  const match = (side: Side, opening: number): Match => ({ ...side, opening })
  if (second === undefined) return [[match(a, first)], [match(b, first)]]
  if (a === b) return [[match(a, first)], [match(a, second)]]
  return [
    [match(a, first), match(b, second)],
    [match(b, first), match(a, second)],
  ]
}
