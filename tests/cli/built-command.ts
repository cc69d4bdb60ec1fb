import { fileURLToPath } from 'node:url'

/** The command as it is installed. */
export const builtCommand = fileURLToPath(new URL('../../dist/cli/paperjig.js', import.meta.url))

/** Its scripts, and what the build keeps beside them. */
export const builtScripts = fileURLToPath(new URL('../../dist/command', import.meta.url))

/** Of what the last step of the build writes. */
export const builtLast = `${builtScripts}/command.cjs.compiled`
