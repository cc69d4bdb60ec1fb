import type { Point } from '../../geometry/shape/point.ts'
import type { Segment } from '../../geometry/shape/segment.ts'
import { showLength } from '../../length/show-length.ts'
import type { Placed } from '../../model/feature.ts'
import type { Model, Part } from '../../model/part.ts'
import type { Size } from '../../model/size.ts'
import { printable } from '../../number/tolerance.ts'
import type { Words } from '../../text/words.ts'
import { circleOf } from '../circle-of-holes.ts'
import { besideOf, type Edge } from '../dimension/edge.ts'
import { besideGap } from '../dimension/lay-beside.ts'
import type { Between, Run, Stop } from '../dimension/run.ts'
import { grouped } from '../grouped.ts'
import { type Axis, type Datum, datumOf, sideOfDatum } from './datum.ts'
import type { MatchedPair } from './matched-pairs.ts'
import { cutPlaces, middleOfView, outlinePlaces, type Place } from './places.ts'
import type { IsScaled } from './scaled-in.ts'
import type { View } from './view.ts'

/** The dimensions along one axis of a view: from its datum on one side of it, from the centre line on the other. */
export type AxisDimensions = {
  readonly axis: Axis
  readonly datum: Datum
  readonly fromDatum?: { readonly edge: Edge; readonly run: Run }
  readonly fromCentre?: { readonly edge: Edge; readonly run: Run; readonly at: number }
  /** Beside the first of these two edges that has a run. */
  readonly between: readonly Between[]
}

export type DimensionFacts = {
  readonly part: Part
  readonly model: Model
  readonly pairs: readonly MatchedPair[]
  readonly isChamfer: (edge: Segment) => boolean
  readonly isScaled: IsScaled
}

/** Past a line to what its extension begins at. */
const fromCorner = 0.8
const fromCross = 2.4

/** Everything that is dimensioned along one axis of a view; places in the drawing's millimetres, which are `factor` of the wood's. */
export function axisDimensions(
  axis: Axis,
  view: View,
  factor: number,
  facts: DimensionFacts,
): AxisDimensions {
  const { part, model } = facts
  const datum = datumOf(axis, view, part)
  const other = datumOf(axis === 'x' ? 'y' : 'x', view, part)
  const near = sideOfDatum(axis === 'x' ? 'y' : 'x', other)
  const edgeAt = (side: Edge['side']): Edge => ({ side, at: view.box[side] * factor })
  const edges = { datum: edgeAt(near), centre: edgeAt(opposite[near]) }
  const middle = middleOfView(view, axis)
  const { centred, others } = sorted(axis, view, middle, facts)
  const show = (mm: number, scaled: boolean): Words =>
    showLength(
      mm,
      { unit: model.units, precision: model.precision },
      { unitMark: false, basis: scaled ? 'scaled' : 'derived' },
    )
  const stopsOf = (
    places: readonly Place[],
    edge: Edge,
    origin: number,
    inward: 1 | -1 | undefined,
  ): readonly Stop[] =>
    merged(
      places.map(({ at, radius, rank, cut, tabled = false }) => {
        const beside = besideOf(edge, { x: at.x * factor, y: at.y * factor })
        const away = radius > 0 ? Math.max(radius * factor, 1) + fromCross : fromCorner
        const distance = inward === undefined ? Math.abs(at[axis] - origin) : (at[axis] - origin) * inward
        return {
          at: at[axis] * factor,
          from: Math.min(beside.out + away, besideGap - 1),
          words: show(distance, facts.isScaled(cut, axis)),
          rank,
          // the table measures nothing from the middle
          tabled: tabled && inward !== undefined,
        }
      }),
    )
  const whole = wholeStop(axis, view, datum, factor, facts)
  const ofPlaces = stopsOf(others, edges.datum, datum.at, datum.inward)
  const zero: Stop = { at: datum.at * factor, from: 1, words: ['0'], rank: 0 }
  const fromDatum = merged([zero, ...whole, ...ofPlaces])
  const fromCentre = stopsOf(centred, edges.centre, middle, undefined)
  const origin: Stop = { at: middle * factor, from: besideGap - 1.5, words: ['centre'], rank: 0 }
  return {
    axis,
    datum,
    ...(fromDatum.length > 1
      ? { fromDatum: { edge: edges.datum, run: { origin: zero.at, stops: fromDatum } } }
      : {}),
    ...(fromCentre.length > 0
      ? {
          fromCentre: {
            edge: edges.centre,
            at: origin.at,
            run: { origin: origin.at, stops: merged([origin, ...fromCentre]) },
          },
        }
      : {}),
    between: betweenOf(axis, view, factor, facts, show),
  }
}

const opposite = { left: 'right', right: 'left', top: 'bottom', bottom: 'top' } as const

/** The whole size: on the front both ways, elsewhere the thickness and the length of an edge, which the front does not show. */
function wholeStop(
  axis: Axis,
  view: View,
  { at, inward, measures }: Datum,
  factor: number,
  { part, model }: DimensionFacts,
): readonly Stop[] {
  if (view.face !== 'front' && (measures === 'length' || measures === 'width')) return []
  const [low, high] = axis === 'x' ? [view.box.left, view.box.right] : [view.box.bottom, view.box.top]
  const far = inward === 1 ? high : low
  const size: Pick<Size, 'mm' | 'basis'> =
    measures === 'edge'
      ? { mm: Math.abs(far - at), basis: 'derived' }
      : { mm: Math.abs(far - at), basis: part[measures].basis }
  const words = showLength(
    size.mm,
    { unit: model.units, precision: model.precision },
    { unitMark: false, basis: size.basis },
  )
  return [{ at: far * factor, from: 1, words, rank: 0 }]
}

/**
 * What stands on the middle of the part, alone or as a pair, is measured from there, so that a blank a little off size
 * stays symmetrical; a longer row from its datum, so that one stop after another is set. Common practice, no source.
 */
function sorted(
  axis: Axis,
  view: View,
  middle: number,
  { isChamfer }: DimensionFacts,
): { readonly centred: readonly Place[]; readonly others: readonly Place[] } {
  const centred: Place[] = []
  const others: Place[] = []
  const cuts = grouped(view.own, ({ cut }) => cut)
  const notchSides: number[] = []
  for (const features of cuts.values()) {
    const places = placesOfCut(features)
    const notch = features.flatMap(notchPlaces)
    const coordinates = distinct([...places, ...notch].map(({ at }) => at[axis]))
    const onMiddle =
      coordinates.length <= 2 && Math.abs((coordinates[0]! + coordinates.at(-1)!) / 2 - middle) < printable
    if (onMiddle) {
      centred.push(...places, ...notch)
      notchSides.push(...notch.map(({ at }) => at[axis]))
    } else others.push(...places)
  }
  const isNotchSide = (p: Point): boolean => notchSides.some(at => Math.abs(at - p[axis]) < printable)
  others.push(...outlinePlaces(view, isChamfer).filter(({ at }) => !isNotchSide(at)))
  const [low, high] = axis === 'x' ? [view.box.left, view.box.right] : [view.box.bottom, view.box.top]
  const isEnd = ({ at }: Place): boolean =>
    Math.min(Math.abs(at[axis] - low), Math.abs(at[axis] - high)) < printable
  return { centred: centred.filter(p => !isEnd(p)), others: others.filter(p => !isEnd(p)) }
}

function placesOfCut(features: readonly Placed[]): readonly Place[] {
  const circle = features[0]?.row?.pattern === 'circle' ? circleOf(features) : undefined
  if (circle === undefined) return features.flatMap(cutPlaces)
  return [{ at: circle.centre, radius: 0, rank: 2, cut: features[0]!.cut }]
}

/** The corners of a notch; the outline has them too. */
function notchPlaces({ shape, cut }: Placed): readonly Place[] {
  if (shape.kind !== 'edge-cut') return []
  return shape.region.outer.segments.map(({ from }): Place => ({ at: from, radius: 0, rank: 1, cut }))
}

function distinct(values: readonly number[]): readonly number[] {
  const ascending = [...values].sort((a, b) => a - b)
  return ascending.filter((value, i) => i === 0 || value - ascending[i - 1]! >= printable)
}

/** One dimension where several lead to the same place: the most wanted, from the nearest thing. */
function merged(stops: readonly Stop[]): readonly Stop[] {
  const ascending = [...stops].sort((a, b) => a.at - b.at || a.rank - b.rank)
  const kept: Stop[] = []
  for (const stop of ascending) {
    const last = kept.at(-1)
    if (last === undefined || stop.at - last.at >= printable) kept.push(stop)
    else {
      const [first, second] = last.rank <= stop.rank ? [last, stop] : [stop, last]
      const tabled = first.tabled === true && second.tabled === true
      kept[kept.length - 1] = { ...first, from: Math.max(first.from, second.from), tabled }
    }
  }
  return kept
}

function betweenOf(
  axis: Axis,
  { own }: View,
  factor: number,
  { pairs }: DimensionFacts,
  show: (mm: number, scaled: boolean) => Words,
): readonly Between[] {
  const centres = new Map(
    own.flatMap(({ id, shape }) => (shape.kind === 'bore' ? [[id, shape.centre] as const] : [])),
  )
  const found = pairs.flatMap(({ first, second }): Between[] => {
    const [a, b] = [centres.get(first), centres.get(second)]
    if (a === undefined || b === undefined) return []
    const [from, to] = a[axis] <= b[axis] ? [a[axis], b[axis]] : [b[axis], a[axis]]
    if (to - from < printable) return []
    return [
      { from: from * factor, to: to * factor, words: show(to - from, false), says: `${first} to ${second}` },
    ]
  })
  return found.filter(
    (one, i) =>
      found.findIndex(o => Math.abs(o.from - one.from) < printable && Math.abs(o.to - one.to) < printable) ===
      i,
  )
}
