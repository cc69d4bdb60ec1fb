import { type FaceName, sayFace } from '../../finding/face-name.ts'
import type { Source } from '../../finding/source.ts'
import type { CutPlan, Located } from '../../plan/plan.ts'
import type { Feature, Shape } from '../feature.ts'
import type { Arris } from './arris.ts'
import { described } from './cut-builder.ts'
import type { Site } from './site.ts'

type AlongPlan = Extract<CutPlan, { readonly on: readonly Located<FaceName>[] }>

/** What one cut takes from one arris: what tells it from the others of the cut, and the strips, usually one. */
export type Worked = {
  readonly face: Arris['face']
  readonly told: readonly string[]
  readonly shapes: readonly Shape[]
}

/** The features of a cut that works several arrises; of one alone the name is the cut's. */
export function featuresAlong(cut: AlongPlan, worked: readonly Worked[]): readonly Feature[] {
  return worked.flatMap(({ face, told, shapes }) =>
    shapes.map((shape, i) => ({
      id: [cut.id.value, ...told, ...(shapes.length > 1 ? [`${i + 1}`] : [])].join('.'),
      face,
      shape,
      ...described(cut),
    })),
  )
}

/** What tells the arris of a face and edge from the others of its cut: nothing where there is no other. */
export function toldApart(
  faces: readonly Located<FaceName>[],
  face: Located<FaceName>,
  edges: readonly Located<FaceName>[],
  edge: Located<FaceName>,
): readonly string[] {
  return [
    ...(faces.length > 1 ? [sayFace(face.value)] : []),
    ...(edges.length > 1 ? [sayFace(edge.value)] : []),
  ]
}

/** A size that a plan gives, by what it is called. */
export type Named = { readonly name: string; readonly mm: number; readonly source: Source }

/** Why nothing can be worked along an edge, at the place that names it, or at the size that is too large. */
export function reportNoStrip(
  site: Site,
  why: 'curved' | 'too-wide',
  { edge }: Pick<Arris, 'edge'>,
  named: Located<FaceName>,
  size: Named,
): void {
  const { length, width } = site.extent
  if (why === 'curved') reportCurved(site, edge, named.source)
  else reportTooWide(site, size, edge === 'left' || edge === 'right' ? length : width)
}

/** An edge along which nothing can be worked, since it is not straight. */
export function reportCurved({ context }: Site, edge: FaceName, source: Source): void {
  context.report({
    rule: 'no-straight-edge',
    severity: 'error',
    places: [{ source }],
    facts: { edge: sayFace(edge) },
  })
}

/** A size of which nothing is left where there is so much, in millimetres. */
export function reportTooWide({ context }: Site, { name, mm, source }: Named, limit: number): void {
  context.report({
    rule: 'nothing-left',
    severity: 'error',
    places: [{ source }],
    facts: { what: name, size: { value: mm, unit: 'mm' }, limit: { value: limit, unit: 'mm' } },
  })
}
