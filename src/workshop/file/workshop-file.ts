import { millimetresPerInch } from '../../length/unit.ts'
import { leaf } from '../../yaml/schema/leaf.ts'
import {
  type Bits,
  bitPoints,
  type ClearWood,
  type Fits,
  type Glue,
  type Neck,
  type Printer,
  type Sanding,
  type SizeSets,
  type Workshop,
} from '../workshop.ts'
import { angle } from './angle.ts'
import { duration } from './duration.ts'
import { group } from './group.ts'
import { length, type Range } from './length.ts'
import type { Setting } from './setting.ts'
import { share } from './share.ts'
import { sizeList } from './size-list.ts'
import { word } from './word.ts'

const inch = millimetresPerInch
const upTo = (largest: number): Range => ({ least: 0, largest })
const tool: Range = { least: 0.1, largest: 8 * inch }

const sets = (what: string) => ({
  inch: { key: 'inch', setting: sizeList(what, 'inch', tool) },
  mm: { key: 'mm', setting: sizeList(what, 'mm', tool) },
})

const bits: Setting<Bits> = group(
  { name: 'the bits', example: 'inch: [1/16 to 1/2 by 1/64]' },
  {
    ...sets('a bit'),
    point: { key: 'point', setting: word('a point', bitPoints), comment: bitPoints.join(', ') },
    pointAngle: { key: 'point-angle', setting: angle(60, 180), comment: 'degrees, of a twist drill' },
    spur: {
      key: 'spur',
      setting: length('the spur', upTo(inch)),
      comment: 'how far that of a brad point stands out',
    },
  },
)

const circleTemplates: Setting<SizeSets> = group(
  { name: 'the circle templates', example: 'inch: [1/8 to 1 by 1/8]' },
  sets('a hole of a circle template'),
)

const kerf: Setting<Workshop['kerf']> = group(
  { name: 'the kerf', example: 'circular: 1/8' },
  {
    circular: { key: 'circular', setting: length('the kerf', upTo(inch)), comment: 'circular saw' },
    band: { key: 'band', setting: length('the kerf', upTo(inch)), comment: 'band saw' },
  },
)

const blank: Setting<Workshop['blank']> = group(
  { name: 'the blank', example: 'length: 1/4' },
  {
    length: { key: 'length', setting: length('the allowance', upTo(12 * inch)) },
    width: { key: 'width', setting: length('the allowance', upTo(12 * inch)) },
  },
)

const sanding: Setting<Sanding> = group(
  { name: 'the sanding', example: 'small: 1/32' },
  {
    small: { key: 'small', setting: length('the allowance', upTo(inch)), comment: 'on small parts' },
    large: { key: 'large', setting: length('the allowance', upTo(inch)), comment: 'on the others' },
    smallBelow: {
      key: 'small-below',
      setting: length('the size', upTo(100 * inch)),
      comment: 'a part is small when its longest side is shorter than this',
    },
  },
)

const turning: Setting<Fits['turning']> = group(
  { name: 'the turning fit', example: 'small: 1/64' },
  {
    small: { key: 'small', setting: length('the clearance', upTo(inch)), comment: 'on thin pins' },
    large: { key: 'large', setting: length('the clearance', upTo(inch)), comment: 'on thicker ones' },
    smallUpTo: {
      key: 'small-up-to',
      setting: length('the size', upTo(10 * inch)),
      comment: 'the thickest of the thin pins',
    },
  },
)

const fits: Setting<Fits> = group(
  { name: 'the fits', example: 'easy: 1/64' },
  {
    turning: { key: 'turning', setting: turning },
    push: { key: 'push', setting: length('the clearance', upTo(inch)) },
    easy: { key: 'easy', setting: length('the clearance', upTo(inch)) },
    glue: { key: 'glue', setting: length('the clearance', upTo(inch)) },
    machinedSlot: {
      key: 'machined-slot',
      setting: length('the clearance', upTo(inch)),
      comment: 'a slot made by machine, over its tongue',
    },
    dowelSpare: {
      key: 'dowel-spare',
      setting: length('the spare depth', upTo(inch)),
      comment: 'depth to spare, of a dowel glued at both ends',
    },
  },
)

const clear: Setting<ClearWood> = group(
  { name: 'the clear wood', example: 'least: 1/32' },
  {
    diameters: { key: 'diameters', setting: share(10), comment: 'beside the rim, in diameters of the hole' },
    least: { key: 'least', setting: length('the clear wood', upTo(4 * inch)), comment: 'and never less' },
    most: {
      key: 'most',
      setting: length('the clear wood', upTo(4 * inch)),
      comment: 'nor more is asked for',
    },
    breaksBelow: {
      key: 'breaks-below',
      setting: share(1),
      comment: 'the share of it below which the wood breaks out',
    },
    underPoint: {
      key: 'under-point',
      setting: length('the clear wood', upTo(4 * inch)),
      comment: 'under the point of the bit',
    },
  },
)

const neck: Setting<Neck> = group(
  { name: 'the neck', example: 'across: 1/4' },
  {
    along: {
      key: 'along',
      setting: length('the neck', upTo(4 * inch)),
      comment: 'the grain runs through it',
    },
    across: { key: 'across', setting: length('the neck', upTo(4 * inch)), comment: 'short grain' },
  },
)

const glue: Setting<Glue> = group(
  { name: 'the glue', example: 'clamps: 60 min' },
  {
    open: { key: 'open', setting: duration, comment: 'from spreading it to closing the joint' },
    clamps: { key: 'clamps', setting: duration },
    machining: { key: 'machining', setting: duration },
    full: { key: 'full', setting: duration, comment: 'to full strength' },
  },
)

const margin: Setting<Printer['margin']> = group(
  { name: 'the margin', example: 'left: 1/4' },
  {
    left: { key: 'left', setting: length('the margin', upTo(4 * inch)) },
    right: { key: 'right', setting: length('the margin', upTo(4 * inch)) },
    top: { key: 'top', setting: length('the margin', upTo(4 * inch)) },
    bottom: { key: 'bottom', setting: length('the margin', upTo(4 * inch)) },
  },
)

const printer: Setting<Printer> = group(
  { name: 'the printer', example: 'margin: { left: 1/4 }' },
  { margin: { key: 'margin', setting: margin } },
)

/** The version of the workshop file's format, and its key. */
export const version = '1'
export const versionKey = 'paperjig-workshop'

/** Every figure of the shop as it stands in the file. A field of `Workshop` without its entry fails the type check. */
export const workshopFile: Setting<Workshop> = group(
  { name: 'a workshop', example: 'kerf: { circular: 1/8 }' },
  {
    bits: {
      key: 'bits',
      setting: bits,
      comment:
        'The diameters of your bits, by the unit that is stamped on them. Number and letter drills by name: "#43",\nletter F.',
    },
    circleTemplates: {
      key: 'circle-templates',
      setting: circleTemplates,
      comment:
        'The diameters of the holes in your circle templates, with which corners are drawn on the wood.',
    },
    kerf: { key: 'kerf', setting: kerf, comment: 'What a saw turns into dust.' },
    blank: {
      key: 'blank',
      setting: blank,
      comment: 'How much larger a blank is than what is cut from it, in total.',
    },
    sanding: {
      key: 'sanding',
      setting: sanding,
      comment: 'What the saw leaves outside the line for the sander.',
    },
    fits: {
      key: 'fits',
      setting: fits,
      comment: 'How much wider a hole is than its pin, a slot than its tongue.',
    },
    clear: { key: 'clear', setting: clear, comment: 'The wood that is left beside and under a hole.' },
    wall: {
      key: 'wall',
      setting: length('the wall', upTo(4 * inch)),
      comment: 'least wood beside a slot or a cut-out',
    },
    neck: { key: 'neck', setting: neck, comment: 'The least width of a narrow place.' },
    smallestPiece: {
      key: 'smallest-piece',
      setting: length('the smallest piece', upTo(100 * inch)),
      comment: "no shorter piece is cut off by itself; the saw's manual comes first",
    },
    glue: { key: 'glue', setting: glue, comment: 'The times of your glue; see its label.' },
    printer: {
      key: 'printer',
      setting: printer,
      comment: 'The edges of the paper that your printer cannot reach.',
    },
  },
  { [versionKey]: leaf(version, ({ source }) => source), units: leaf('inch or mm', ({ source }) => source) },
)
