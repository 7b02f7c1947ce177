import { defineConfig } from 'vitest/config';
import { inkChangesInTests, inkFiles } from './ink-changes.mjs';

/** They time real key presses and disks, which a busy machine may stretch. */
const timed = ['**/*.timed.test.{ts,tsx}'];

/** They put a counter into what others share. */
const watched = ['source/cli/open-work.test.ts'];

export default defineConfig({
  root: '.',
  plugins: [inkChangesInTests],
  define: { SLANTWISE_VERSION: '"test"' },
  test: {
    testTimeout: 20_000,
    // With CI set, Ink draws nothing until it exits.
    env: { CI: 'false' },
    // On two cores: tests in a terminal wait as much as they work.
    maxWorkers: 3,
    unstubEnvs: true,
    server: { deps: { inline: [inkFiles] } },
    setupFiles: ['test/tools/tries.ts'],
    projects: [
      { extends: true, test: { name: 'timed', include: timed, retry: 2 } },
      // Never tried again: a law that fails for one bag in a thousand is broken. What one file has loaded the next goes on
      // with, which saves two thirds of the loading.
      {
        extends: true,
        test: {
          name: 'pure',
          include: ['**/*.test.{ts,tsx}'],
          exclude: [...timed, ...watched, 'node_modules/**'],
          isolate: false,
          // Laws run over many bags, and other tests run beside them.
          testTimeout: 90_000,
          // One whose expectations are never reached fails. Timed ones wait for a screen, which is an expectation too.
          expect: { requireAssertions: true },
        },
      },
      { extends: true, test: { name: 'watched', include: watched } },
    ],
  },
});
