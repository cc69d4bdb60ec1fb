import { defineConfig } from 'vitest/config'

export default defineConfig({
  test: {
    include: ['tests/browser/**/*.test.ts'],
    globalSetup: 'tests/build-if-stale.ts',
    testTimeout: 120_000,
  },
})
