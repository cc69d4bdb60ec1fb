/** A value with its unit. Lengths are in millimetres and angles in degrees, the units of the JSON report. */
export type Quantity = { readonly value: number; readonly unit: 'mm' | 'degree' | 'count' | 'byte' }
