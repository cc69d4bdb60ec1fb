/**
 * Heights of capital letters in millimetres, of the series of ISO 3098. What is worked from (sizes, letters on the
 * part) is large; what is read once is medium; small is for what only has to be found again.
 */
export const lettering = { title: 5, large: 3.5, medium: 2.5, small: 1.8 } as const
