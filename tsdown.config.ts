import { defineConfig } from 'tsdown'

const common = { format: 'esm', target: 'node20', fixedExtension: false } as const

/**
 * The unpacking of WOFF2 fonts brings a dictionary as large as half of what pdfkit needs, which takes as long to set up
 * as several pages to print. Our fonts reach pdfkit unpacked.
 */
const withoutBrotli = {
  name: 'without-brotli',
  resolveId: (id: string) => (id === 'brotli/decompress.js' ? '\0without-brotli' : null),
  load: (id: string) =>
    id === '\0without-brotli'
      ? 'export default () => { throw new Error("fonts packed with brotli are not read") }'
      : null,
}

export default defineConfig([
  {
    ...common,
    // The command, as scripts of which the build can keep what the engine compiles. Those for one command, and pdfkit,
    // are loaded when they are wanted; the fonts are read as files.
    entry: { command: 'src/cli/run.ts' },
    format: 'cjs',
    outDir: 'dist/command',
    platform: 'node',
    dts: false,
    minify: true,
    plugins: [withoutBrotli],
    deps: { alwaysBundle: [/./], onlyBundle: false },
  },
  {
    ...common,
    // What is called, and what the last step of the build calls.
    entry: { paperjig: 'src/cli/paperjig.ts', 'keep-compiled': 'src/cli/compiled/keep.ts' },
    outDir: 'dist/cli',
    platform: 'node',
    dts: false,
    minify: true,
  },
  {
    ...common,
    // The library leaves its dependencies to who uses it, in Node or in a browser.
    entry: { index: 'src/app/index.ts', geometry: 'src/geometry/index.ts' },
    outDir: 'dist/lib',
    platform: 'neutral',
    dts: true,
  },
])
