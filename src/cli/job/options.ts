import type { Choices } from '../../app/index.ts'

/** What `print` and `svg` have in common, as it comes from the command line. */
export type OutputOptions = {
  readonly output?: string
  readonly paper?: string
  readonly part?: readonly string[]
}

export type PrintOptions = OutputOptions & { readonly strict?: true }

export type CheckOptions = { readonly json?: true }

export function toChoices({ paper, part }: OutputOptions): Choices {
  return { ...(paper === undefined ? {} : { paper }), ...(part === undefined ? {} : { parts: part }) }
}
