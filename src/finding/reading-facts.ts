/**
 * What can be wrong with a text before there is a plan. Texts of the maker's stand here as they were written,
 * shortened by `excerpt`; the sentence shows what cannot be seen as codes. Lists are joined with commas.
 */
export type ReadingFacts = TextFacts & YamlFacts & KeyFacts & ValueFacts & PlanFacts

/** The text itself. */
export type TextFacts = {
  'not-utf-8': { readonly byte: string }
  'forbidden-character': { readonly character: string }
  /** More than the program takes: `measured` and `limit` say how much, `of` says what. */
  'limit-passed': { readonly of: string }
  /** There are more faults than are listed. */
  'findings-left-out': Record<string, never>
  'empty-plan': Record<string, never>
}

/** YAML, and where its rules surprise. */
export type YamlFacts = {
  'not-yaml': { readonly found: string; readonly wanted: string }
  /** `bottom:5/8` */
  'colon-without-space': { readonly key: string; readonly value: string }
  /** `title: Car 1: 16` */
  'colon-in-text': { readonly text: string }
  /** `diameter: #4`: nothing is left of the value. */
  'comment-eats-value': { readonly key: string; readonly comment: string }
  /** `label: Bolster #4`: something is left of it. */
  'comment-in-text': { readonly value: string; readonly comment: string }
  /** `{ label: Bolster, left }` */
  'comma-in-braces': { readonly found: string; readonly before: string }
  /** `left: ~` */
  'bare-tilde': { readonly key: string }
  'tab-indent': Record<string, never>
  'tag-refused': { readonly tag: string }
  'merge-key': Record<string, never>
  'alias-unknown': { readonly name: string }
  'alias-loop': { readonly name: string }
  'second-document': Record<string, never>
  'yaml-version': { readonly found: string }
}

export type KeyFacts = {
  'unknown-key': {
    readonly found: string
    readonly within: string
    readonly nearest?: string
    readonly allowed: string
  }
  /** A key of the plan file that this version of the program does not read yet. */
  'later-key': { readonly found: string; readonly within: string }
  'missing-key': { readonly key: string; readonly within: string; readonly wanted: string }
  'key-not-text': { readonly found: string }
  'duplicate-key': { readonly key: string }
}

export type ValueFacts = {
  'missing-value': { readonly wanted: string }
  /** `found`: a list, a group of keys, or a text, which is then quoted. */
  'wrong-kind': { readonly found: string; readonly text?: string; readonly wanted: string }
  'not-a-choice': {
    readonly found: string
    readonly of: string
    readonly nearest?: string
    readonly allowed: string
  }
  'not-an-id': { readonly found: string; readonly nearest?: string }
  'not-a-name': { readonly found: string; readonly wanted: string; readonly nearest?: string }
  'reserved-name': { readonly name: string; readonly means: string }
  'not-a-count': { readonly found: string; readonly wanted: string }
  /** `why` is the case in short, for programs that read the report. */
  'not-a-size': {
    readonly found: string
    readonly wanted: string
    readonly nearest?: string
    readonly why: string
  }
}

/** What the plan says as a whole. */
export type PlanFacts = {
  'wrong-version': { readonly found: string; readonly wanted: string }
  'nothing-in-it': { readonly key: string; readonly wanted: string }
  'odd-mirrored': { readonly count: string }
  'duplicate-id': { readonly id: string }
  /** Two edges of an outline with one name. */
  'duplicate-edge': { readonly name: string }
  /** One side named twice, or one word for two sides. */
  'side-twice': { readonly side: string }
  /** `on: [front, top]`: one position cannot serve faces that run between different sides. */
  'faces-differ': { readonly first: string; readonly second: string }
  'cut-kind-missing': { readonly allowed: string }
  'two-cut-kinds': { readonly first: string; readonly second: string }
  /** `front` in the position of something on the front. */
  'side-off-face': { readonly found: string; readonly on: string; readonly allowed: string }
  /** `lean` toward a side that the face does not run to. */
  'lean-off-face': { readonly found: string; readonly on: string; readonly allowed: string }
  /** Two leans in one direction of a face. */
  'leans-alike': { readonly first: string; readonly second: string; readonly allowed: string }
  /** `left` and `right`, `round` and `chamfer`: one too many. */
  'not-both': { readonly first: string; readonly second: string }
}
