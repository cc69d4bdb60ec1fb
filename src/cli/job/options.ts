import type { Choices, PlanText, SvgChoices } from '../../app/index.ts'

/** What `print` and `svg` have in common, as it comes from the command line. */
export type OutputOptions = {
  readonly output?: string
  readonly paper?: string
  readonly part?: readonly string[]
  readonly shop?: string
  readonly margin?: string
  readonly overlap?: string
  readonly sheet?: readonly string[]
  readonly copies?: 'piece' | 'part'
}

/** What `strip` takes of them. */
export type StripOptions = Pick<OutputOptions, 'output' | 'paper' | 'shop' | 'margin' | 'overlap'> & {
  readonly printer?: string
}

export type PrintOptions = OutputOptions & { readonly strict?: true; readonly printer?: string }

export type SvgOptions = OutputOptions & {
  readonly hairline?: true
  readonly kerf?: string
  readonly engrave?: true
  /** False only where the call says --no-text. */
  readonly text: boolean
}

export type CheckOptions = { readonly json?: true; readonly shop?: string; readonly explain?: string }

export function toChoices(
  { paper, part, sheet, margin, overlap, copies }: OutputOptions,
  shop: PlanText | undefined,
): Choices {
  return {
    ...(paper === undefined ? {} : { paper }),
    ...(part === undefined ? {} : { parts: part }),
    ...(shop === undefined ? {} : { shop }),
    ...(margin === undefined ? {} : { margin }),
    ...(overlap === undefined ? {} : { overlap }),
    ...(sheet === undefined ? {} : { sheets: sheet }),
    ...(copies === undefined ? {} : { copies }),
  }
}

export function toSvgChoices({ hairline, kerf, engrave, text }: SvgOptions): SvgChoices {
  return {
    ...(hairline === undefined ? {} : { lines: 'hairline' }),
    ...(kerf === undefined ? {} : { kerf }),
    ...(engrave === undefined ? {} : { engraving: true }),
    ...(text ? {} : { text: false }),
  }
}
