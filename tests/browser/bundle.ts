import { fileURLToPath } from 'node:url'
import { build } from 'esbuild'

/** The page's script for a browser, everything in it. Anything that only Node has fails the bundling. */
export async function bundleForBrowser(entry: URL): Promise<string> {
  const { outputFiles, warnings } = await build({
    entryPoints: [fileURLToPath(entry)],
    bundle: true,
    write: false,
    platform: 'browser',
    format: 'esm',
    target: 'es2022',
    logLevel: 'silent',
  })
  if (warnings.length > 0) throw new Error(warnings.map(({ text }) => text).join('\n'))
  return outputFiles[0]!.text
}
