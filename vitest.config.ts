import { defineConfig } from 'vitest/config'

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    // wants Chromium, so it is a command of its own: npm run test:browser
    exclude: ['tests/browser/**'],
    globalSetup: 'tests/build-if-stale.ts',
    // No module keeps anything that changes, so test files may share their modules: loading and compiling them anew for
    // each file takes as long as a third of the tests. Every core has a worker, since nothing else wants one meanwhile.
    isolate: false,
    maxWorkers: '100%',
    testTimeout: 120_000,
  },
})
