import { defineConfig } from 'vitest/config';

export default defineConfig(({ mode }) => ({
  test: {
    include: ['tests/**/*.test.ts'],
    globalSetup: ['tests/build-first.ts'],
    setupFiles: ['tests/seed.ts'],
    env: mode === 'deep' ? { COPELEAF_DEEP: '1' } : {},
    // Ten times what the longest takes on a quiet machine: a busy one proves nothing false.
    testTimeout: 600_000,
    hookTimeout: 600_000,
    expect: { poll: { interval: 10, timeout: 60_000 } },
    // One worker fewer than there are cores, the default, leaves one of two cores idle.
    maxWorkers: 2,
    // What one joint is solved and drawn with is soon garbage: with room for it before it is cleared, an eighth less time is spent.
    execArgv: ['--max-semi-space-size=64'],
    // A worker loads the program, the kernels and a browser once for all files that it runs. No test leaves anything behind.
    isolate: false,
  },
}));
