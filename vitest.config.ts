import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    globalSetup: ['tests/build-first.ts'],
    testTimeout: 60_000,
    // One worker fewer than there are cores, the default, leaves one of two cores idle.
    maxWorkers: 2,
    hookTimeout: 120_000,
  },
});
