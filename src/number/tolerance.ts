/**
 * The two tolerances of the program, in millimetres. There are no others: a function that approximates takes
 * its greatest deviation as an argument.
 */

/**
 * Points nearer than this are one point. It is far above the rounding of doubles at ten metres (2e-12 mm) and
 * far below anything a printer or a hand can show. Larger, and slivers of real drawings would vanish; smaller,
 * and crossings calculated twice along different ways would no longer meet.
 */
export const coincident = 1e-6

/**
 * The greatest distance between where something is printed and where it should be: a tenth of a dot at 600 dpi
 * is 0.0042 mm, so nothing finer can be put on paper.
 */
export const printable = 0.005
