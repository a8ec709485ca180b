import { register } from 'node:module';
import { defineConfig } from 'vitest/config';

/** Has Node read TypeScript: here, for what comes before the tests, and in each worker. */
const TYPESCRIPT = new URL('tests/typescript.mjs', import.meta.url).href;
register(TYPESCRIPT);

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
    execArgv: ['--max-semi-space-size=64', '--import', TYPESCRIPT, '--enable-source-maps'],
    // Node itself runs the tests and what they try: by Vite's runner each call from one file into another is a look-up, and all that
    // is reckoned takes half as long again.
    experimental: { viteModuleRunner: false, nodeLoader: false },
    // A worker loads the program, the kernels and a browser once for all files that it runs. No test leaves anything behind.
    isolate: false,
  },
}));
