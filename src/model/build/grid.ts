import type { GridPlan } from '../../plan/plan.ts'
import { type CutBuilder, isKnown, missingSizes } from './cut-builder.ts'
import type { FaceFrame } from './face-frame.ts'
import { buildHoles } from './holes.ts'
import { resolvePositive } from './resolve-size.ts'

/** Rows of holes, numbered line by line from the first hole on; each line of the grid runs along the face. */
export const buildGrid: CutBuilder<GridPlan> = (site, cut) => {
  const [along, across] = cut.spacing.map(s => resolvePositive(site.context, s, 'the spacing'))
  const [columns, lines] = [cut.count[0].value, cut.count[1].value]
  return buildHoles(
    site,
    cut,
    (frame, at) => {
      if (along === undefined || across === undefined) return undefined
      if (!isKnown(along) || !isKnown(across)) return { centres: [] }
      const x = steps(cut, 'along', frame, along.mm, columns)
      const y = steps(cut, 'across', frame, across.mm, lines)
      const centres = Array.from({ length: columns * lines }, (_, i) => {
        const line = Math.floor(i / columns)
        const centre = { ...at }
        centre[x.axis] += x.step * ((i % columns) - x.back)
        centre[y.axis] += y.step * (line - y.back)
        return [centre, { pattern: 'grid', line: line + 1 }] as const
      })
      return { centres }
    },
    missingSizes({ 'spacing along': along, 'spacing across': across }),
  )
}

/** Away from the side that the first hole is measured from; about the middle where the grid is centred. */
function steps(
  cut: GridPlan,
  direction: 'along' | 'across',
  frame: FaceFrame,
  spacing: number,
  count: number,
) {
  const { at } = cut
  const zero = frame.ruler(frame[direction][0])
  if (at.kind === 'concentric') return { axis: zero.axis, step: zero.sign * spacing, back: 0 }
  const given = at[direction]
  if (given !== undefined && 'kind' in given) {
    if (given.kind === 'centre') return { axis: zero.axis, step: zero.sign * spacing, back: (count - 1) / 2 }
    return { axis: zero.axis, step: frame.ruler(given.side).sign * spacing, back: 0 }
  }
  const away = given === undefined ? zero.sign : -frame.ruler(given.toward).sign
  return { axis: zero.axis, step: away * spacing, back: 0 }
}
