import { defineConfig } from 'tsdown'

const common = { format: 'esm', target: 'node20', fixedExtension: false } as const

export default defineConfig([
  {
    ...common,
    // The command starts fast as one small bundle. pdfkit reads data files of its own and is loaded when a PDF is
    // written; the font is read as files.
    entry: { paperjig: 'src/cli/paperjig.ts' },
    outDir: 'dist/cli',
    platform: 'node',
    dts: false,
    minify: true,
    deps: { alwaysBundle: [/./], neverBundle: ['pdfkit'], onlyBundle: false },
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
