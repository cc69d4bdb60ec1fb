import { type FaceName, sayFace } from '../../finding/face-name.ts'
import { sides } from '../../finding/side.ts'
import { nearestName } from '../../length/nearest-name.ts'
import type { CutPlan, Located } from '../../plan/plan.ts'
import type { Feature, Missing } from '../feature.ts'
import type { Size } from '../size.ts'
import type { FaceFrame } from './face-frame.ts'
import type { Site } from './site.ts'

/**
 * Makes the features that one kind of cut stands for. An empty list means that a value could not be had and that
 * it has been reported.
 */
export type CutBuilder<C extends CutPlan> = (site: Site, cut: C) => readonly Feature[]

/** A size, the word that the drawing does not give it, or nothing where it has been reported as a fault. */
export type Resolved = Size | 'unknown' | undefined

/** What every feature takes over from its cut. */
export function described(cut: CutPlan): Pick<Feature, 'cut' | 'label' | 'note' | 'page' | 'source'> {
  return {
    cut: cut.id.value,
    ...(cut.label === undefined ? {} : { label: cut.label.value }),
    ...(cut.note === undefined ? {} : { note: cut.note.value }),
    ...(cut.page === undefined ? {} : { page: cut.page.value }),
    source: cut.source,
  }
}

/** The faces that a cut lies on, each with the id of what is cut there: of one face the name alone. */
export function facesOf(
  site: Site,
  cut: Extract<CutPlan, { on: unknown }>,
): readonly { readonly frame: FaceFrame; readonly id: string }[] | undefined {
  const frames: { frame: FaceFrame; id: string }[] = []
  for (const face of cut.on) {
    const frame = site.frame(face.value)
    if (frame === undefined) {
      reportUnknownEdge(site, face)
      return undefined
    }
    frames.push({ frame, id: cut.on.length === 1 ? cut.id.value : `${cut.id.value}.${sayFace(face.value)}` })
  }
  return frames
}

/** A name that is neither a side nor an edge. */
export function reportUnknownEdge({ context, edgeNames }: Site, face: Located<FaceName>): void {
  const known = [...sides, ...edgeNames]
  const found = sayFace(face.value)
  const nearest = nearestName(found, known)
  context.report({
    rule: 'unknown-edge',
    severity: 'error',
    places: [{ source: face.source }],
    facts: { found, allowed: known.join(', '), ...(nearest === undefined ? {} : { nearest }) },
  })
}

/** What is listed in place of features that cannot be put on the wood. */
export function unplaced(cut: CutPlan, id: string, face: FaceName, missing: readonly Missing[]): Feature {
  return { id, face, shape: { kind: 'unplaced', what: cut.kind, missing }, ...described(cut) }
}

/** Those of the named sizes that the drawing does not give. */
export function missingSizes(sizes: Readonly<Record<string, unknown>>): readonly Missing[] {
  return Object.entries(sizes).flatMap(([name, size]) =>
    size === 'unknown' ? [{ kind: 'size' as const, name }] : [],
  )
}

/** Whether a size is known in millimetres. */
export function isKnown(size: Resolved): size is Size {
  return size !== undefined && size !== 'unknown'
}
