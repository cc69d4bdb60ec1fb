import { type Side, sides } from '../finding/side.ts'
import { regionBounds } from '../geometry/measure/bounds.ts'
import type { Region } from '../geometry/shape/contour.ts'
import { apply, type Matrix, mirrorAcross } from '../geometry/shape/matrix.ts'
import { transformRegion } from '../geometry/shape/transform.ts'
import { type FaceName, isSide } from '../plan/face-name.ts'
import { boxPose, type Extent, faceExtent } from './box-faces.ts'
import type { Feature } from './feature.ts'
import { type Face, faceOf, type Solid } from './part.ts'
import { toPart } from './pose.ts'

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
    pose: boxPose(placeOfMirrored(side), extent),
    region: transformRegion(solid.faces[side].region, mirrorOf(solid, side, extent)),
  })
  return {
    outline: transformRegion(solid.outline, mirrorOf(solid, 'front', extent)),
    faces: Object.fromEntries(sides.map(s => [s, face(s)])) as Record<Side, Face>,
    edges: solid.edges.map(edge => mirrorEdge(edge, extent)),
    features: solid.features.map(f => mirrorFeature(solid, f, extent)),
  }
}

/** Where in the wood a side of a mirrored piece lies. */
export function placeOfMirrored(side: Side): Side {
  if (side === 'left') return 'right'
  if (side === 'right') return 'left'
  return side
}

/** Left for right as the face is seen: a side in its middle, an edge about its own start. */
function mirrorOf(solid: Solid, face: FaceName, extent: Extent): Matrix {
  return mirrorAcross(isSide(face) ? faceExtent(face, extent).right / 2 : edgeMiddle(faceOf(solid, face)))
}

/** The middle of the stretch of an edge that has wood; any place would do, but it is this one that its pose turns about. */
function edgeMiddle({ region }: Face): number {
  const { left, right } = regionBounds(region)
  return (left + right) / 2
}

/**
 * An edge at the other hand's place. What is at x on it is found at 2·middle − x, so its own x runs from the image of
 * the point that lies there.
 */
function mirrorEdge(edge: Face, { length }: Extent): Face {
  const middle = edgeMiddle(edge)
  const { right, up, out } = edge.pose
  const start = toPart(edge.pose, { x: 2 * middle, y: 0 })
  return {
    ...edge,
    pose: {
      origin: { ...start, x: length - start.x },
      right: { x: right.x, y: -right.y, z: -right.z },
      up: { ...up, x: -up.x },
      out: { ...out, x: -out.x },
    },
    region: transformRegion(edge.region, mirrorAcross(middle)),
  }
}

function mirrorFeature(solid: Solid, feature: Feature, extent: Extent): Feature {
  const { shape } = feature
  const matrix = mirrorOf(solid, shape.kind === 'edge-cut' ? 'front' : feature.face, extent)
  const mirrored = (region: Region) => transformRegion(region, matrix)
  switch (shape.kind) {
    case 'bore':
      return { ...feature, shape: { ...shape, centre: apply(matrix, shape.centre) } }
    case 'cut-out': {
      const { entry } = shape
      const moved = entry && { entry: { ...entry, centre: apply(matrix, entry.centre) } }
      return { ...feature, shape: { ...shape, region: mirrored(shape.region), ...moved } }
    }
    case 'pocket':
      return { ...feature, shape: { ...shape, region: mirrored(shape.region), angle: -shape.angle } }
    case 'edge-cut':
      return { ...feature, shape: { ...shape, region: mirrored(shape.region) } }
    case 'unplaced':
      return feature
  }
}
