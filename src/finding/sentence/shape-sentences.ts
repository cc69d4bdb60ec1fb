import type { FindingOf } from '../finding.ts'
import type { ShapeFacts } from '../model-facts.ts'
import { visible } from '../visible.ts'
import type { Sentences } from './wording.ts'

const whyNoArc: Readonly<Record<string, string>> = {
  'in-line': 'the three points lie in one line; write to: for a straight edge',
  flat: 'it would have to come back along the way it went; write to: for a straight edge',
  'full-turn': 'it bends by a full turn or more; wanted: less than 360°',
  'no-direction':
    'nothing comes before it whose direction it could go on in; give it a radius, or a point to go through',
  'no-chord': 'two of its points are one',
}

export const shapeSentences: Sentences<keyof ShapeFacts> = {
  'outline-needs-size': ({ facts }) =>
    `a distance from the ${visible(facts.side)} wants a part that says its size; give the part a size: beside its outline, or measure from the left and the bottom`,
  'arc-radius-too-small': ({ facts }, { show }) =>
    `a radius of ${show(facts.radius)} does not reach from one end of the arc to the other; at least ${show(facts.least)} is wanted`,
  'arc-impossible': ({ facts }) => `this arc cannot be drawn: ${whyNoArc[facts.why] ?? visible(facts.why)}`,
  'corner-no-room': ({ facts }, { show }) =>
    facts.why === 'smooth'
      ? `${visible(facts.corner)} is no corner: the edges run smoothly into each other; leave its ${show(facts.size)} out`
      : `there is no room for ${show(facts.size)} at ${visible(facts.corner)}: the edges that meet there are too short`,
  'curve-impossible': () => 'two neighbouring points of this curve are one; leave one of them out',
  'no-arris': noArris,
  'no-straight-edge': ({ facts }) =>
    `the ${visible(facts.edge)} of the outline is not one straight edge, so nothing can be worked along it; name a straight edge (name:), or write edges: all where it is chamfered or rounded over`,
  'nothing-to-run-in': ({ facts }, { show }) =>
    `the stops take ${show(facts.stops)}, and it is ${show(facts.available)} from end to end: there is nothing left to run in`,
  'nothing-left': ({ facts }, { show }) =>
    `${visible(facts.what)} comes to ${show(facts.size)}, and the limit is ${show(facts.limit)}: nothing is left of the part`,
}

function noArris({ facts: { face, edge, why } }: FindingOf<'no-arris'>): string {
  const [one, other] = [visible(face), visible(edge)]
  switch (why) {
    case 'all':
      return `"all" goes round the front or the back; on the ${one} name the edge, front or back`
    case 'corner':
      return `the ${one} and the ${other} meet in a corner of the outline; write it there, as a corner (corners:) or a notch`
    case 'apart':
      return `the ${one} and the ${other} do not meet, so there is no edge between them; wanted: a face and an edge of it, such as on: front and top`
  }
}
