import { sayFace } from '../../finding/face-name.ts'
import type { FitPlan, JointPlan, Plan } from '../../plan/plan.ts'
import type { Feature } from '../feature.ts'
import type { Fit, Joint, Target } from '../joint.ts'
import type { Part, Undrawn } from '../part.ts'
import { reportUnknownPin } from './bore.ts'
import type { Context } from './context.ts'
import { isKnown } from './cut-builder.ts'
import { resolveReference } from './reference.ts'
import { resolveDistance } from './resolve-size.ts'

/** The joints of a plan; what a reference leads to nowhere is reported, and its joint left out. */
export function buildJoints(
  plan: Plan,
  parts: ReadonlyMap<string, Part | Undrawn>,
  context: Context,
): readonly Joint[] {
  return plan.joints.flatMap(joint => {
    const built =
      joint.kind === 'pin' ? pinJoint(plan, joint, parts, context) : tongueJoint(plan, joint, parts, context)
    return built ? [built] : []
  })
}

type Parts = ReadonlyMap<string, Part | Undrawn>
type Written<K extends JointPlan['kind']> = Extract<JointPlan, { kind: K }>

function pinJoint(plan: Plan, joint: Written<'pin'>, parts: Parts, context: Context): Joint | undefined {
  const { pin, source } = joint
  if (!context.pins.has(pin.value)) reportUnknownPin(context, pin)
  else context.noteUse('pin', pin.value, pin.source)
  const through = joint.through.flatMap(reference => {
    const target = resolveReference(plan, parts, reference, context)
    return target && serves(target, reference.written, parts, isBore, 'a hole, such as part.hole', context)
      ? [target]
      : []
  })
  const sound = context.pins.has(pin.value) && through.length === joint.through.length
  return sound ? { kind: 'pin', pin: pin.value, through, source } : undefined
}

function tongueJoint(
  plan: Plan,
  joint: Written<'tongue'>,
  parts: Parts,
  context: Context,
): Joint | undefined {
  const tongue = resolveReference(plan, parts, joint.tongue, context)
  const into = resolveReference(plan, parts, joint.into, context)
  const fit = joint.fit && buildFit(joint.fit, context)
  if (tongue === undefined || into === undefined || (joint.fit && fit === undefined)) return undefined
  const whole = 'the part, or one of its ends or edges, such as partition.left'
  if (tongue.features.length > 0) {
    report(context, tongue, joint.tongue.written, whole)
    return undefined
  }
  const wanted = 'a slot, groove, rebate, notch or cut-out, such as floor.partition-slot'
  if (!serves(into, joint.into.written, parts, isOpening, wanted, context)) return undefined
  return { kind: 'tongue', tongue, into, ...(fit ? { fit } : {}), source: joint.source }
}

function buildFit(fit: FitPlan, context: Context): Fit | undefined {
  if (fit.kind === 'named') return fit.fit.value
  const size = resolveDistance(context, fit.clearance)
  return size === undefined ? undefined : { clearance: isKnown(size) ? size : 'unknown' }
}

const isBore = ({ shape }: Feature) =>
  shape.kind === 'bore' ||
  (shape.kind === 'unplaced' && ['hole', 'row', 'grid', 'hole-circle'].includes(shape.what))

const openings: readonly string[] = ['pocket', 'cut-out', 'edge-cut', 'groove', 'rebate']
const openingPlans: readonly string[] = ['slot', 'cut-out', 'notch', 'groove', 'rebate']

const isOpening = ({ shape }: Feature) =>
  shape.kind === 'unplaced' ? openingPlans.includes(shape.what) : openings.includes(shape.kind)

/** Whether the features are of the kind that the joint wants; of an undrawn part nothing is known. */
function serves(
  target: Target,
  written: string,
  parts: Parts,
  suits: (feature: Feature) => boolean,
  wanted: string,
  context: Context,
): boolean {
  const part = parts.get(target.part)
  if (part === undefined || !('drawn' in part)) return target.face === undefined
  const features = part.drawn.features.filter(({ id }) => target.features.includes(id))
  if (features.length > 0 && features.every(suits)) return true
  report(context, target, written, wanted)
  return false
}

function report(context: Context, { source, face }: Target, written: string, wanted: string): void {
  const found = face === undefined ? written : `${written}, ${sayFace(face)}`
  context.report({ rule: 'no-joint', severity: 'error', places: [{ source }], facts: { found, wanted } })
}
