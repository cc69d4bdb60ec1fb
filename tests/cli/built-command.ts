import { fileURLToPath } from 'node:url'

/** The command as it is installed. */
export const builtCommand = fileURLToPath(new URL('../../dist/cli/paperjig.js', import.meta.url))
