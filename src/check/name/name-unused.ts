import type { FindingOf } from '../../finding/finding.ts'
import { noLimit, type Rule } from '../rule.ts'

/** A named size, a stock or a pin that nothing uses. */
export const nameUnused: Rule<'name-unused'> = {
  find: ({ model }) =>
    model.names.flatMap(({ kind, name, source, uses }): FindingOf<'name-unused'>[] =>
      kind === 'part' || uses.length > 0
        ? []
        : [{ rule: 'name-unused', severity: 'note', places: [{ source }], facts: { kind, name } }],
    ),
  explanation: {
    purpose:
      'A size with a name is there so that everything follows when it changes. Where nothing uses it, a number was typed in its place, and that number will not follow.',
    limit: noLimit,
    origin: 'the plan itself',
  },
}
