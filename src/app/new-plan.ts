import type { Unit } from '../length/unit.ts'
import { labelFromId } from '../model/build/label.ts'
import type { Found } from './found.ts'
import { readModel } from './read-model.ts'

/** What a new plan is begun with, as somebody types it. */
export type NewPlan = {
  readonly title: string
  readonly units: Unit
  /** Of the board that the first part is cut from. */
  readonly thickness: string
  /** What the first part is called. */
  readonly part: string
  /** Its length x width. */
  readonly size: string
}

/** What stands in a new plan where nothing else is said. */
export function usualPlan(units: Unit): NewPlan {
  const sizes = { inch: ['7/16', '6 x 1 1/2'], mm: ['11', '150 x 40'] } as const
  const [thickness, size] = sizes[units]
  return { title: 'New model', units, thickness, part: 'Side', size }
}

/** The title of a plan that is kept in a file of this name: "pier-lamp" is "Pier lamp". */
export function titleFromFileName(name: string): string {
  return labelFromId(name)
}

/**
 * A plan to go on from, with remarks and with examples of cuts that are remarks too. What cannot stand in a plan, such
 * as a size that is none, is found as when it is read.
 */
export function newPlan(plan: NewPlan): Found & { readonly text: string } {
  const text = planText(plan)
  const { findings, texts, style } = readModel({ text, file: 'the new plan' })
  return { text, findings, texts, style }
}

/** What differs between the examples of a plan in inches and those of one in millimetres. */
const examples = {
  inch: { radius: '1/4', from: '1', hole: '3/8', pitch: '3/4', peg: '1/8', deep: '1/4', slot: '7/8 x 3/8' },
  mm: { radius: '6', from: '25', hole: '8', pitch: '20', peg: '3', deep: '6', slot: '22 x 10' },
} as const satisfies Readonly<Record<Unit, unknown>>

function planText({ title, units, thickness, part, size }: NewPlan): string {
  const { radius, from, hole, pitch, peg, deep, slot } = examples[units]
  const id = idOf(part)
  const label = sameWords(id, part) ? [] : [`    label: ${quoted(part)}`]
  const lines = [
    '# One file for one model or jig. What stands behind a # is a remark.',
    '#',
    '#   paperjig check FILE     what the drawing leaves out or gets wrong',
    '#   paperjig print FILE     true-size templates; print them at 100 %',
    '#   paperjig cards FILE     cards to take to the paper drawing',
    '',
    'paperjig: 1',
    `title: ${quoted(title)}`,
    remark(`units: ${units}`, 'what a bare number means; the other unit is written with its name'),
    '',
    '# Sizes that come again and again get a name, and any size may be a formula of names: 2 * board + 1.',
    'let:',
    remark(`  board: ${quoted(thickness)}`, 'measure your own board: what is cut to fit it follows'),
    '',
    '# What is on the rack. width, length, count and wood may be said too.',
    'stock:',
    '  plank: { thickness: board }',
    '',
    '# Every part lies with its face side toward you. left and right are its ends, top and bottom its edges, and every',
    '# position is a distance from one of them. A size scaled off the drawing has a ~ before it; one that the drawing',
    '# does not give is: unknown. Both are listed by the check, so that nothing is forgotten.',
    'parts:',
    `  ${id}:`,
    ...label,
    remark('    from: plank', 'gives the thickness'),
    remark(`    size: ${quoted(size)}`, 'length x width'),
    '',
    '    # Take the # away from what you need.',
    '    #',
    '    # make: 2',
    remark('    # mirrored: true', 'half of them as drawn, half of them as in a mirror'),
    remark(`    # corners: ${radius}`, 'the radius of every corner'),
    '    # cuts:',
    '    #   - hole: pivot',
    `    #     at: { left: ${from}, bottom: center }`,
    `    #     diameter: ${hole}`,
    remark('    #   - slot: cross-bar', 'placed by its near sides, or by its middle'),
    '    #     at: center',
    remark(`    #     size: ${slot}`, 'along the length x across it'),
    remark('    #   - row: pegs', 'holes in a line are bored with one fence setting'),
    '    #     on: top',
    '    #     at: { left: center, front: center }',
    '    #     toward: right',
    `    #     spacing: ${pitch}`,
    '    #     count: 5',
    `    #     diameter: ${peg}`,
    remark(`    #     depth: ${deep}`, 'left out: through'),
  ]
  return `${lines.join('\n')}\n`
}

/** A line with a remark behind it, under the remarks of its neighbours unless it is longer. */
function remark(line: string, words: string): string {
  return `${line.padEnd(remarkColumn)} # ${words}`
}

const remarkColumn = 28

/** "Side frame" is called side-frame in references; what has no letter at all gets a name to be changed. */
function idOf(part: string): string {
  const plain = part.normalize('NFKD').replace(/\p{Mark}/gu, '')
  const words = plain.toLowerCase().match(/[a-z0-9]+/g) ?? []
  const id = words.join('-')
  return /^[a-z]/.test(id) ? id : ['part', ...words].join('-')
}

function sameWords(id: string, part: string): boolean {
  return id.replaceAll('-', ' ') === part.toLowerCase()
}

/** Words that YAML reads as they stand are left so, since somebody is going to read them; the others are quoted. */
function quoted(text: string): string {
  return /^[\p{Letter}\d][\p{Letter}\d /*+.-]*$/u.test(text) &&
    !/\s$|^(true|false|null|yes|no|on|off)$/i.test(text)
    ? text
    : JSON.stringify(text)
}
