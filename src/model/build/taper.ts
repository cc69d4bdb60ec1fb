import { polygon } from '../../geometry/shape/polygon.ts'
import { printable } from '../../number/tolerance.ts'
import type { TaperPlan } from '../../plan/plan.ts'
import type { TaperFacts } from '../shape-facts.ts'
import type { Size } from '../size.ts'
import type { Context } from './context.ts'
import { isKnown, missingSizes } from './cut-builder.ts'
import { resolveAngle, resolvePositive } from './resolve-size.ts'
import type { ShapeBuilder } from './shape-builder.ts'

/**
 * A part that narrows from end to end. Where the plan gives one end and the angle, the other end follows; where it
 * gives all three, the widths are drawn and the angle is held against them.
 *
 * Source: far end = near end + length·tan(angle), from the right triangle under the slope.
 */
export const buildTaper: ShapeBuilder<'taper'> = (context, plan) => {
  const length = resolvePositive(context, plan.length, 'the length')
  const left = plan.left && resolvePositive(context, plan.left, 'the width of the left end')
  const right = plan.right && resolvePositive(context, plan.right, 'the width of the right end')
  const angle = plan.angle && resolveAngle(context, plan.angle)
  if (length === undefined || (plan.left && left === undefined)) return undefined
  if ((plan.right && right === undefined) || (plan.angle && angle === undefined)) return undefined
  const known = { left: isKnown(left) ? left : undefined, right: isKnown(right) ? right : undefined }
  const slope = typeof angle === 'number' ? angle : undefined
  // what is given twice may be lacking once
  const enough = known.left && known.right ? true : (known.left ?? known.right) && slope !== undefined
  if (!isKnown(length) || !enough) {
    const sizes = { length, 'width of the left end': left, 'width of the right end': right, angle }
    return { missing: missingSizes(sizes), faults: [] }
  }

  const sides = plan.straight.value === 'neither' ? 2 : 1
  const narrowing = slope === undefined ? undefined : sides * length.mm * Math.tan(slope)
  const widths = {
    left: known.left?.mm ?? known.right!.mm - narrowing!,
    right: known.right?.mm ?? known.left!.mm - narrowing!,
  }
  const least = Math.min(widths.left, widths.right)
  if (!(least > 0)) {
    reportNothingLeft(context, plan, least)
    return undefined
  }
  const wide = Math.max(widths.left, widths.right)
  const derived: Size = {
    mm: wide,
    basis: [known.left, known.right].some(s => s?.basis === 'scaled') ? 'scaled' : 'derived',
    written: '',
    source: plan.source,
  }
  const width = [known.left, known.right].find(s => s?.mm === wide) ?? derived
  return {
    kind: 'taper',
    outline: { outer: trapezium(length.mm, widths, wide, plan.straight.value), holes: [] },
    length,
    width,
    edges: [],
    corners: [],
    unknownCorners: [],
    missing: [],
    sizeDiffers: [],
    taper: taperFacts(plan, known, slope, length.mm, sides),
  }
}

function trapezium(
  length: number,
  { left, right }: { readonly left: number; readonly right: number },
  wide: number,
  straight: TaperPlan['straight']['value'],
) {
  const low = (width: number): number => {
    if (straight === 'bottom') return 0
    return straight === 'top' ? wide - width : (wide - width) / 2
  }
  const corners = [
    { x: 0, y: low(left) },
    { x: length, y: low(right) },
    { x: length, y: low(right) + right },
    { x: 0, y: low(left) + left },
  ]
  return polygon(corners, ['bottom', 'right', 'top', 'left'])
}

function taperFacts(
  plan: TaperPlan,
  { left, right }: { readonly left: Size | undefined; readonly right: Size | undefined },
  slope: number | undefined,
  length: number,
  sides: number,
): TaperFacts {
  const facts: TaperFacts = {
    ...(left ? { left } : {}),
    ...(right ? { right } : {}),
    ...(slope !== undefined && plan.angle
      ? { angle: { radians: slope, written: plan.angle.size.written, source: plan.angle.source } }
      : {}),
  }
  if (!left || !right || slope === undefined) return facts
  const wide = Math.max(left.mm, right.mm)
  const narrow = Math.min(left.mm, right.mm)
  const widthByAngle = wide - sides * length * Math.tan(Math.abs(slope))
  if (Math.abs(widthByAngle - narrow) <= printable) return facts
  const drawnAngle = Math.atan((wide - narrow) / sides / length)
  return { ...facts, disagreement: { drawnAngle, statedAngle: Math.abs(slope), widthByAngle } }
}

function reportNothingLeft(context: Context, plan: TaperPlan, least: number): void {
  context.report({
    rule: 'nothing-left',
    severity: 'error',
    places: [{ source: plan.angle?.source ?? plan.source }],
    facts: {
      what: 'the width of the far end',
      size: { value: least, unit: 'mm' },
      limit: { value: 0, unit: 'mm' },
    },
  })
}
