/** What a command touches of the process it runs in. */
export type Shell = Pick<NodeJS.Process, 'stdin' | 'stdout' | 'stderr' | 'env'>
