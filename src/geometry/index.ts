/**
 * Paperjig's geometry: plane shapes of exact lines and arcs. Lengths are millimetres, angles radians, y points
 * up and a positive turn is counter-clockwise. An operation that a shape can defeat gives an {@link Outcome}; a
 * RangeError is a fault of the caller.
 *
 * @module geometry
 */

export { arcBeziers, type Cubic } from './approximate/beziers.ts'
export { arcChords, chordContour, chordPoints } from './approximate/chords.ts'
export { difference, exclusiveOr, intersection, union } from './boolean/boolean.ts'
export { createMemory, type Memory } from './boolean/memory.ts'
export { regionsByWinding } from './boolean/overlay.ts'
export { arcByBend, arcByRadius, arcBySagitta, arcByTangent, arcThrough } from './construct/arc-from.ts'
export { biarc } from './construct/biarc.ts'
export { biarcsOfCurve, biarcsThrough, type Curve } from './construct/biarcs.ts'
export { circleThrough } from './construct/circle-through.ts'
export { chamfer, type Eased, type Easing, easeCorners, fillet } from './construct/corner.ts'
export { ellipse } from './construct/ellipse.ts'
export { holeChord, holeCircle, type PolygonSize, regularPolygon } from './construct/regular.ts'
export { type TangentArc, type Touch, tangentArcs } from './construct/tangent-arcs.ts'
export { type TangentLine, tangentLines } from './construct/tangent-lines.ts'
export { type ClippedPath, clipPaths } from './cut/clip-path.ts'
export { cutByLine, cutByRectangle } from './cut/cut-region.ts'
export {
  type ContourFacts,
  type Crossing,
  contourFacts,
  type Doubling,
  type Gap,
  type SegmentPlace,
} from './facts/contour-facts.ts'
export { type Mended, mend, type Repair } from './facts/mend.ts'
export { type Nesting, nesting, regionsOf } from './facts/nesting.ts'
export { type CircleFit, fitCircle } from './fit/circle.ts'
export { fitLine, type LineFit } from './fit/line.ts'
export { fitRigid, fitSimilarity, type PatternFit } from './fit/pattern.ts'
export type { Residuals } from './fit/residuals.ts'
export { placeOn } from './intersect/place-on.ts'
export { type Meeting, meetings } from './intersect/segments.ts'
export { leftOf, pointAt, tangentAt, unit } from './measure/along.ts'
export { regionArea, signedArea } from './measure/area.ts'
export {
  boundsOfContours,
  boundsOfRegions,
  contourBounds,
  joinAllBounds,
  joinBounds,
  noBounds,
  regionBounds,
  segmentBounds,
  transformBounds,
} from './measure/bounds.ts'
export {
  circleCircleCrossings,
  type Disc,
  lineCircleCrossings,
  lineLineCrossing,
} from './measure/carrier.ts'
export { enclosingCircle, enclosingCircleOfPoints } from './measure/enclosing-circle.ts'
export { enclosingRectangle, type LeaningRectangle } from './measure/enclosing-rectangle.ts'
export { convexHull, convexHullOfPoints } from './measure/hull.ts'
export { inscribedCircle } from './measure/inscribed-circle.ts'
export { pointInContour, pointInRegion, type Side } from './measure/inside.ts'
export { contourLength, segmentLength } from './measure/length.ts'
export { type Moments, type PrincipalMoments, principalMoments, regionMoments } from './measure/moments.ts'
export {
  type Nearest,
  type NearestOnContour,
  type NearestOnRegion,
  nearestOnContour,
  nearestOnRegion,
  nearestOnSegment,
} from './measure/nearest.ts'
export { type Neck, narrowestNeck } from './measure/neck.ts'
export { clockwise, counterClockwise, orientRegion } from './measure/orient.ts'
export { discProtrusion, type Protrusion, protrusion } from './measure/protrusion.ts'
export { type PointPair, segmentDistance } from './measure/segment-distance.ts'
export {
  contourSeparation,
  type Place,
  regionSeparation,
  type Separation,
  thinnestWall,
} from './measure/separation.ts'
export { ringAlongPath, slotAlongPath } from './offset/along-path.ts'
export { offsetPath, offsetRegion, offsetRegions } from './offset/offset.ts'
export {
  type End,
  type Join,
  type JoinOptions,
  type PathOptions,
  usualMitreLimit,
} from './offset/options.ts'
export { chain } from './shape/chain.ts'
export { circle } from './shape/circle.ts'
export type { Bounds, Contour, Region } from './shape/contour.ts'
export {
  apply,
  compose,
  identity,
  type Matrix,
  mirrorAcross,
  quarterTurns,
  scale,
  shift,
  turn,
} from './shape/matrix.ts'
export { type Fault, failure, type Outcome, success } from './shape/outcome.ts'
export { between, distance, midpoint, type Point, point, type Vector } from './shape/point.ts'
export { polygon, polyline } from './shape/polygon.ts'
export {
  type Corner,
  type CornerName,
  type Corners,
  rectangle,
  rectangleWithCorners,
} from './shape/rectangle.ts'
export { reverseContour, reverseSegment } from './shape/reverse.ts'
export { type Arc, arc, type Line, line, type Segment, startAngle, sweep } from './shape/segment.ts'
export { slot } from './shape/slot.ts'
export { spans } from './shape/span.ts'
export { transformContour, transformRegion } from './shape/transform.ts'
