import { sayFace } from '../finding/face-name.ts'
import type { Place } from '../finding/finding.ts'
import type { Quantity } from '../finding/quantity.ts'
import type { Feature, Placed } from '../model/feature.ts'
import type { Part } from '../model/part.ts'

export function placeOfPart({ id, source }: Pick<Part, 'id' | 'source'>): Place {
  return { source, part: id }
}

export function placeOfFeature({ id }: Pick<Part, 'id'>, feature: Feature): Place {
  return { source: feature.source, part: id, feature: feature.id, side: sayFace(feature.face) }
}

/** The row, grid or circle that a hole belongs to, or the feature itself. */
export function placeOfCut(part: Pick<Part, 'id'>, feature: Feature): Place {
  return { ...placeOfFeature(part, feature), feature: feature.cut }
}

/** What a maker calls a feature. */
export function wordFor({ shape }: Placed): string {
  switch (shape.kind) {
    case 'bore':
      return 'hole'
    case 'pocket':
      return 'slot'
    case 'cut-out':
      return 'cut-out'
    case 'edge-cut':
      return 'notch'
    case 'engraved-lines':
    case 'engraved-text':
      return 'engraving'
    default:
      return shape.kind
  }
}

/** What a maker calls the holes that are bored together. */
export function wordForRow({ row }: Feature): string {
  switch (row?.pattern) {
    case 'grid':
      return 'grid'
    case 'circle':
      return 'hole circle'
    default:
      return 'row'
  }
}

/** Whether a hole is one of several that are bored together. */
export function isOfRow({ row }: Feature): boolean {
  return row !== undefined && row.count > 1
}

export function mm(value: number): Quantity {
  return { value, unit: 'mm' }
}

export function count(value: number): Quantity {
  return { value, unit: 'count' }
}

export function degree(radians: number): Quantity {
  return { value: (radians * 180) / Math.PI, unit: 'degree' }
}
