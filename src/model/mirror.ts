import { type Side, sides } from '../finding/side.ts'
import { regionBounds } from '../geometry/measure/bounds.ts'
import type { Region } from '../geometry/shape/contour.ts'
import { apply, type Matrix, mirrorAcross } from '../geometry/shape/matrix.ts'
import { transformContour, transformRegion } from '../geometry/shape/transform.ts'
import type { Extent } from './box-faces.ts'
import type { Feature } from './feature.ts'
import { type Face, faceOf, type Solid } from './part.ts'
import { type Pose, toPart } from './pose.ts'

/**
 * The other hand of a solid: left for right in the middle of its length. Every side keeps its name and what is on
 * it; the end called left now lies at the right, so it takes the place in the wood that the right end had.
 *
 * Every face is mirrored left for right as it is seen, the ends too: the left end of the drawn piece is seen with its
 * front edge at the right, that of the mirrored piece with its front edge at the left.
 */
export function mirrorSolid(solid: Solid, extent: Extent): Solid {
  const { faces, edges } = solid
  return {
    outline: transformRegion(solid.outline, mirrorAcross(extent.length / 2)),
    faces: Object.fromEntries(sides.map(s => [s, mirrorFace(faces[s], extent)])) as Record<Side, Face>,
    edges: edges.map(edge => mirrorFace(edge, extent)),
    features: solid.features.map(feature => mirrorFeature(solid, feature)),
  }
}

/** Where in the wood a side of a mirrored piece lies. */
export function placeOfMirrored(side: Side): Side {
  if (side === 'left') return 'right'
  if (side === 'right') return 'left'
  return side
}

/** Left for right about the middle of the face, as it is seen. */
function mirrorOf(face: Face): Matrix {
  return mirrorAcross(middleOf(face))
}

/** The middle of a face along its own x. */
function middleOf({ region }: Face): number {
  const { left, right } = regionBounds(region)
  return (left + right) / 2
}

/** The face at its place in the other hand. */
function mirrorFace(face: Face, extent: Extent): Face {
  return { ...face, pose: mirrorPose(face, extent), region: transformRegion(face.region, mirrorOf(face)) }
}

/** The mirror turns the direction of x on a face round, so it starts at what lies as far beyond the face's middle. */
function mirrorPose(face: Face, { length }: Extent): Pose {
  const { right, up, out } = face.pose
  const start = toPart(face.pose, { x: 2 * middleOf(face), y: 0 })
  return {
    origin: { ...start, x: length - start.x },
    right: { x: right.x, y: 0 - right.y, z: 0 - right.z },
    up: { ...up, x: 0 - up.x },
    out: { ...out, x: 0 - out.x },
  }
}

function mirrorFeature(solid: Solid, feature: Feature): Feature {
  const { shape } = feature
  const matrix = mirrorOf(faceOf(solid, feature.face))
  const mirrored = (region: Region) => transformRegion(region, matrix)
  switch (shape.kind) {
    case 'bore': {
      const { lean } = shape
      const leaning = lean && { lean: { ...lean, toward: Math.PI - lean.toward } }
      return { ...feature, shape: { ...shape, centre: apply(matrix, shape.centre), ...leaning } }
    }
    case 'cut-out': {
      const { entry } = shape
      const moved = entry && { entry: { ...entry, centre: apply(matrix, entry.centre) } }
      return { ...feature, shape: { ...shape, region: mirrored(shape.region), ...moved } }
    }
    case 'engraved-lines': {
      const paths = shape.paths.map(path => transformContour(path, matrix))
      return { ...feature, shape: { ...shape, paths } }
    }
    case 'engraved-text': {
      const align = otherWay[shape.align]
      return { ...feature, shape: { ...shape, at: apply(matrix, shape.at), align } }
    }
    case 'pocket':
      return { ...feature, shape: { ...shape, region: mirrored(shape.region), angle: 0 - shape.angle } }
    case 'edge-cut':
    case 'groove':
    case 'rebate':
    case 'bevel':
    case 'chamfer':
    case 'round-over':
      return { ...feature, shape: { ...shape, region: mirrored(shape.region) } }
    case 'unplaced':
      return feature
  }
}

/** A text reads from left to right on both hands, so what it begins at on the one it ends at on the other. */
const otherWay = { start: 'end', middle: 'middle', end: 'start' } as const
