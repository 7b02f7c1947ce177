import { defineConfig } from 'vitest/config';

export default defineConfig({
  root: '.',
  define: { SLANTWISE_VERSION: '"test"' },
  test: {
    include: ['source/**/*.test.{ts,tsx}', 'test/**/*.test.{ts,tsx}'],
    testTimeout: 20_000,
    // With CI set, Ink draws nothing until it exits.
    env: { CI: 'false' },
    maxWorkers: 2,
    // A few tests time real key presses in a real terminal, which a busy machine may stretch.
    retry: 2,
  },
});
