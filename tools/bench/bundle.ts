import { build } from 'esbuild'

/** Bundles a tool as the command is bundled: minified, pdfkit left out. */
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
