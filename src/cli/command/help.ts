export const planHelp = 'the plan file (YAML), or - for standard input'

export const paperHelp =
  'letter, legal, tabloid, a4, a3, a5, or width x height such as 210x297mm (default: letter for plans in inches, a4 in mm)'

export const partHelp = 'only these parts, by the names they have in the plan'

export const shopHelp = 'your own workshop file; paperjig shop --write makes one (default: the usual shop)'

export const marginHelp = 'the edge that the printer cannot reach, such as 5mm (default: as in the workshop)'

/** A call that can be typed as it stands, below the options of a command. */
export function example(call: string): string {
  return `\nExample:\n  ${call}`
}
