import type { PlanFacts } from '../reading-facts.ts'
import { quoted } from '../visible.ts'
import { listed, type Sentences } from './wording.ts'

export const planSentences: Sentences<keyof PlanFacts> = {
  'wrong-version': ({ facts }) =>
    `this plan is of version ${quoted(facts.found)}; this program reads version ${facts.wanted}`,
  'nothing-in-it': ({ facts }) => `${quoted(facts.key)} holds nothing; wanted: ${facts.wanted}`,
  'odd-mirrored': ({ facts }) =>
    `half of a mirrored part's pieces are mirrored, so their number is even; found: ${facts.count}`,
  'duplicate-id': ({ facts }) =>
    `two cuts of this part are called ${quoted(facts.id)}; give each a name of its own`,
  'duplicate-edge': ({ facts }) =>
    `two edges of this outline are called ${quoted(facts.name)}; give each a name of its own`,
  'side-twice': ({ facts }) => `${quoted(facts.side)} stands here twice; name each side once`,
  'faces-differ': ({ facts }) =>
    `a cut on ${quoted(facts.first)} and ${quoted(facts.second)} has no place that serves both; make two cuts of it`,
  'cut-kind-missing': ({ facts }) =>
    `a cut begins with what it is and its name${listed('one of', facts.allowed)}`,
  'two-cut-kinds': ({ facts }) =>
    `a cut is one thing, and this is a ${facts.first} and a ${facts.second}; make two of it, each with its own -`,
  'side-off-face': ({ facts }) =>
    `${quoted(facts.found)} says nothing about a place on the ${facts.on}; there it is a distance from ${facts.allowed}`,
  'lean-off-face': ({ facts }) =>
    `a hole on the ${facts.on} cannot lean toward ${quoted(facts.found)}${listed('one of', facts.allowed)}`,
  'leans-alike': ({ facts }) =>
    `a hole that leans toward ${quoted(facts.first)} has no second lean toward ${quoted(facts.second)}${listed('one of', facts.allowed)}`,
  'not-both': ({ facts }) => `give ${facts.first} or ${facts.second}, not both`,
}
