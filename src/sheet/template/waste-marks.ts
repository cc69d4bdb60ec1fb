import { linesMark } from '../../drawing/make-mark.ts'
import type { Mark } from '../../drawing/mark.ts'
import { difference, intersection } from '../../geometry/boolean/index.ts'
import type { Bounds, Region } from '../../geometry/shape/contour.ts'
import type { Point } from '../../geometry/shape/point.ts'
import type { Placed, Shape } from '../../model/feature.ts'
import { boxAbout } from '../label/find-place.ts'
import { boreRadius } from './bore-marks.ts'
import { hatch } from './hatch.ts'
import { crossReach } from './hole-marks.ts'

/** Hatching, apart by how deep the waste goes. */
export type WasteMarks = { readonly through: readonly Mark[]; readonly stopped: readonly Mark[] }

/**
 * Hatching on what is cut away: slots, mortises, grooves, rebates, cut-outs and notches, as far as they lie on the wood; crossed where
 * wood is left below. It spares lettering and holes. None where the waste cannot be worked out, since the lines to
 * cut to stand without it.
 */
export function wasteMarks(seen: readonly Placed[], wood: Region, lettering: readonly Bounds[]): WasteMarks {
  const spared = [...lettering, ...seen.flatMap(crossBox)]
  const waste = seen.flatMap(({ shape }) => wasteOf(shape))
  const through = waste.filter(w => w.through).map(w => w.region)
  const stopped = waste.filter(w => !w.through).map(w => w.region)
  const throughWaste = intersection(through, [wood])
  const stoppedWaste = intersection(stopped, [wood])
  // what is cut through somewhere else has no wood below
  const below = stoppedWaste.ok ? difference(stoppedWaste.value, through) : stoppedWaste
  const mark = (lines: readonly (readonly [Point, Point])[]): readonly Mark[] =>
    lines.length === 0 ? [] : [linesMark({ layer: 'text', subject: 'waste' }, 'thin', lines)]
  return {
    through: throughWaste.ok ? mark(hatch(throughWaste.value, spared)) : [],
    stopped: below.ok
      ? mark((['rising', 'falling'] as const).flatMap(way => hatch(below.value, spared, way)))
      : [],
  }
}

/** Of a bore its ring says enough, and what eases an edge or engraves leaves no waste to speak of. */
function wasteOf(shape: Shape): readonly { readonly region: Region; readonly through: boolean }[] {
  switch (shape.kind) {
    case 'pocket':
      return [{ region: shape.region, through: shape.depth === 'through' }]
    case 'cut-out':
    case 'edge-cut':
      return [{ region: shape.region, through: true }]
    case 'groove':
    case 'rebate':
      return [{ region: shape.region, through: false }]
    default:
      return []
  }
}

/** The holes that are bored, and the one that a saw's blade goes in by. */
function crossBox({ shape }: Placed): readonly Bounds[] {
  const about = (centre: Point, radius: number): Bounds => {
    const side = 2 * crossReach(radius)
    return boxAbout(centre, { width: side, height: side })
  }
  if (shape.kind === 'bore') return [about(shape.centre, boreRadius(shape))]
  if (shape.kind === 'cut-out' && shape.entry !== undefined)
    return [about(shape.entry.centre, shape.entry.diameter / 2)]
  return []
}
