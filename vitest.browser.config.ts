import { defineConfig } from 'vitest/config'

export default defineConfig({
  test: {
    include: ['tests/browser/**/*.test.ts'],
    globalSetup: 'tests/build-if-stale.ts',
    testTimeout: 120_000,
    // the browser is started and the whole job bundled before the first test
    hookTimeout: 120_000,
  },
})
