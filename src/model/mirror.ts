import { type Side, sides } from '../finding/side.ts'
import type { Region } from '../geometry/shape/contour.ts'
import { apply, type Matrix, mirrorAcross } from '../geometry/shape/matrix.ts'
import { transformRegion } from '../geometry/shape/transform.ts'
import { type Extent, faceExtent } from './box-faces.ts'
import type { Feature } from './feature.ts'
import type { Face, Solid } from './part.ts'
import { type Pose, toPart } from './pose.ts'

/**
 * The other hand of a solid: left for right in the middle of its length. Every side keeps its name and what is on
 * it; the end called left now lies at the right, so it takes the place in the wood that the right end had.
 *
 * Every face is mirrored left for right as it is seen, the ends too: the left end of the drawn piece is seen with its
 * front edge at the right, that of the mirrored piece with its front edge at the left.
 */
export function mirrorSolid(solid: Solid, extent: Extent): Solid {
  const face = (side: Side): Face => ({
    id: side,
    pose: mirrorPose(solid.faces[side].pose, side, extent),
    region: transformRegion(solid.faces[side].region, mirrorOf(side, extent)),
  })
  return {
    outline: transformRegion(solid.outline, mirrorOf('front', extent)),
    faces: Object.fromEntries(sides.map(s => [s, face(s)])) as Record<Side, Face>,
    features: solid.features.map(f => mirrorFeature(f, extent)),
  }
}

/** Where in the wood a side of a mirrored piece lies. */
export function placeOfMirrored(side: Side): Side {
  if (side === 'left') return 'right'
  if (side === 'right') return 'left'
  return side
}

/** The mirror turns the direction of x on a face round, so it starts at what was the face's other end. */
function mirrorPose(pose: Pose, side: Side, extent: Extent): Pose {
  const far = toPart(pose, { x: faceExtent(side, extent).right, y: 0 })
  return {
    origin: { ...far, x: extent.length - far.x },
    right: { x: pose.right.x, y: 0 - pose.right.y, z: 0 - pose.right.z },
    up: { ...pose.up, x: 0 - pose.up.x },
    out: { ...pose.out, x: 0 - pose.out.x },
  }
}

function mirrorOf(side: Side, extent: Extent): Matrix {
  return mirrorAcross(faceExtent(side, extent).right / 2)
}

function mirrorFeature(feature: Feature, extent: Extent): Feature {
  const { shape } = feature
  const matrix = mirrorOf(shape.kind === 'edge-cut' ? 'front' : feature.face, extent)
  const mirrored = (region: Region) => transformRegion(region, matrix)
  switch (shape.kind) {
    case 'bore':
      return { ...feature, shape: { ...shape, centre: apply(matrix, shape.centre) } }
    case 'pocket':
    case 'edge-cut':
      return { ...feature, shape: { ...shape, region: mirrored(shape.region) } }
    case 'unplaced':
      return feature
  }
}
