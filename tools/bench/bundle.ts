import { build } from 'esbuild'

/** Bundles a tool into one file, as the command is; pdfkit stays beside it, as it does for the floor. */
export async function bundle(entry: string, outfile: string): Promise<void> {
  await build({
    entryPoints: [entry],
    outfile,
    bundle: true,
    minify: true,
    platform: 'node',
    format: 'esm',
    external: ['pdfkit'],
    // some of what is bundled is CommonJS and asks Node for its modules
    banner: {
      js: "import { createRequire } from 'node:module'; const require = createRequire(import.meta.url)",
    },
  })
}
