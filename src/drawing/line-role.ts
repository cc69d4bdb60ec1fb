/**
 * What a line is for. The kind of a line is told by its width and dashes alone, never by colour or grey.
 */
export type LineRole =
  /** A line to cut to; its middle is the edge. */
  | 'cut'
  /** Around the part, where the paper is cut off roughly. */
  | 'rough-cut'
  /** A hole's true circle and the cross on its centre. */
  | 'drill'
  | 'hidden'
  | 'centre'
  | 'fold'
  /** Hatching, leaders, rules of a table. */
  | 'thin'
  /** What should be seen from afar: scale bars, face marks, arrows. */
  | 'wide'

export type LineStyle = { readonly width: number; readonly dashes: readonly number[] }

const narrow = 0.18
const broad = 0.35

/**
 * Widths and dash lengths in millimetres. Widths are of the series of ISO 128 (0.18 0.25 0.35, wide to narrow
 * 2 : 1; from memory). Dash lengths are counted in line widths d as in ISO 128-2 (from memory): dash 12 d,
 * long dash 24 d, gap 3 d, dot 0.5 d; taken at twice the narrow width so that the kinds can be told apart at
 * arm's length.
 */
const d = 2 * narrow

export const lineStyles: Readonly<Record<LineRole, LineStyle>> = {
  cut: { width: narrow, dashes: [] },
  'rough-cut': { width: narrow, dashes: [0.5 * d, 3 * d] },
  drill: { width: narrow, dashes: [] },
  hidden: { width: narrow, dashes: [12 * d, 3 * d] },
  centre: { width: narrow, dashes: [24 * d, 3 * d, 0.5 * d, 3 * d] },
  fold: { width: narrow, dashes: [24 * d, 3 * d, 0.5 * d, 3 * d, 0.5 * d, 3 * d] },
  thin: { width: 0.13, dashes: [] },
  wide: { width: broad, dashes: [] },
}
