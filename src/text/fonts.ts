import type { Font } from './font.ts'

/** The weights that lettering may have. */
export type Weight = 'regular' | 'bold'

export type Fonts = Readonly<Record<Weight, Font>>
