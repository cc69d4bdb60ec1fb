import { noLimit, type Rule } from '../rule.ts'
import { meeting, type OutlineFound, outlineFaults } from './faults.ts'

/** Two edges of an outline that cross, or touch where they are not neighbours. */
export const outlineCrossing: Rule<'outline-crossing'> = {
  find: subject => {
    // where two edges lie on each other they meet others at the ends of the stretch, which is said once
    const doubled = new Set(outlineFaults(subject, 'doubled').flatMap(edgesOf))
    return outlineFaults(subject, 'crossing')
      .filter(found => !edgesOf(found).some(edge => doubled.has(edge)))
      .map(found => ({ rule: 'outline-crossing', ...meeting(found) }))
  },
  explanation: {
    purpose:
      'An outline that crosses itself has no inside: most often two points stand in the wrong order, or an arc turns the wrong way. The part is listed and not drawn.',
    limit: noLimit,
    origin: 'an outline goes once round the wood',
  },
}

/** The edges that a fault is about, each with the outline that it belongs to. */
function edgesOf({ fault, place: { part, feature } }: OutlineFound): readonly string[] {
  return fault.edges.map(edge => [part, feature, edge].join(' '))
}
