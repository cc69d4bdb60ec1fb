import { defineConfig } from 'vitest/config'

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    // wants Chromium, so it is a command of its own: npm run test:browser
    exclude: ['tests/browser/**'],
    globalSetup: 'tests/build-if-stale.ts',
    testTimeout: 120_000,
  },
})
