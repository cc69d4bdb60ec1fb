/** The unit of a bare number and of the sizes that are shown. */
export type Unit = 'inch' | 'mm'

/** 1 in = 25.4 mm exactly. Source: international yard and pound agreement, 1959. */
export const millimetresPerInch = 25.4
