/** The six sides of a part seen with its face side (front) toward you and its length left to right. */
export const sides = ['front', 'back', 'left', 'right', 'top', 'bottom'] as const

export type Side = (typeof sides)[number]
