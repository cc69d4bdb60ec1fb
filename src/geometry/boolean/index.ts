/**
 * Regions of lines and arcs under union, difference, intersection and exclusive or, and the engine behind them.
 *
 * ## How it works
 *
 * 1. `pack.ts` writes the contours into arrays of numbers. A segment carries how much the winding number of
 *    each operand is larger on its left than on its right.
 * 2. `box-tree.ts` puts boxes over the segments in the order in which the contours run, which needs no sorting,
 *    and gives the pairs whose boxes meet.
 * 3. `find-crossings.ts` finds where the two of a pair meet. **Snapping**: an end within `coincident` of the
 *    other segment becomes a vertex of it, two ends that near become one vertex, and only what is left is
 *    calculated as a crossing, once for the pair. Curves that graze each other within `coincident` touch in one
 *    vertex. Signs that decide on given points and are not clear in doubles are taken exactly.
 * 4. `split.ts` joins vertices that follow each other on a segment within `coincident` (a point of the input
 *    stands for the crossings around it) and cuts the segments there.
 * 5. `chains.ts` takes edges together that follow each other where nothing else ends: most do. `graph.ts` merges
 *    edges that coincide, adding up their windings, and sorts round every vertex what leaves it.
 *    Every cut keeps what flows into a vertex equal to what flows out of it, so round each vertex the windings
 *    always close, however coarsely it was snapped.
 * 6. **Consistency** (`overlay.ts`): where snapping moved anything by more than rounding, an edge may have been
 *    carried to another or across it; and where two edges cross at so small an angle that rounding moves the crossing
 *    farther than `coincident`, an edge along one of them may lack it. The snapped edges are arranged anew from step 2 until nothing moves, at
 *    most a fixed number of times. Then every vertex is clear of all edges that do not end in it.
 * 7. `faces.ts` gives every face its winding numbers and checks each edge against them, and `link-parts.ts` finds
 *    by a level line (`level-line.ts`) to its neighbour in which face of the others each separate part lies, and
 *    checks the faces along the line. An arrangement that is not a map of the plane contradicts itself here. It is then snapped 4 and
 *    at last 16 times as coarsely; what still contradicts itself comes back as a fault that holds the input.
 * 8. `trace.ts` follows the edges between inside and outside, `pen.ts` makes contours of them, and these make regions: a contour
 *    belongs to the region whose face it bounds, nothing is searched for.
 *
 * ## Limits
 *
 * - A contour that crosses itself is not refused: what it winds round counter-clockwise, after it was turned so
 *   that its area is positive, is filled. `facts/` says whether there is such a thing in an input.
 * - Results narrower than `coincident` are left out. A piece of an arc that stands no farther than `coincident`
 *   from its chord comes back as a line.
 * - The ends of an arc lie on its circle within twice `coincident`; centre and radius are never changed.
 *
 * ## Calling the engine
 *
 * From contours: `regionsByWinding(contours, w => w > 0)`. Without making contours first, which is quicker:
 *
 * ```ts
 * const pack = createPack(expectedSegments)
 * moveTo(pack, x, y)                          // starts a contour; it may cross itself and others
 * lineTo(pack, x, y, tag)
 * arcTo(pack, x, y, centreX, centreY, 1, tag) // 1 counter-clockwise, −1 clockwise; less than a full turn
 * closePath(pack)
 * overlay(pack, w => w > 0, 'offset', input)  // Outcome<readonly Region[]>
 * ```
 */
export { difference, exclusiveOr, intersection, union } from './boolean.ts'
export { createMemory, type Memory } from './memory.ts'
export { overlay, regionsByWinding } from './overlay.ts'
export { arcTo, closePath, createPack, lineTo, moveTo, type Pack } from './pack.ts'
