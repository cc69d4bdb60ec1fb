import type { Choices, PlanText } from '../../app/index.ts'

/** What `print` and `svg` have in common, as it comes from the command line. */
export type OutputOptions = {
  readonly output?: string
  readonly paper?: string
  readonly part?: readonly string[]
  readonly shop?: string
}

export type PrintOptions = OutputOptions & { readonly strict?: true }

export type CheckOptions = { readonly json?: true; readonly shop?: string; readonly explain?: string }

export function toChoices({ paper, part }: OutputOptions, shop: PlanText | undefined): Choices {
  return {
    ...(paper === undefined ? {} : { paper }),
    ...(part === undefined ? {} : { parts: part }),
    ...(shop === undefined ? {} : { shop }),
  }
}
