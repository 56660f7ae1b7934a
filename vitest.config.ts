import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { defineConfig } from 'vitest/config';

/** What somebody keeps on this machine is no matter of the tests. */
const env = { LYEWARD_DATA: join(tmpdir(), `lyeward-tests-${process.pid}`) };

/** A test that hangs ends, one on a busy machine does not (ms): speed is the bench's business. */
const testTimeout = 300_000;

// Every test runs on the sources; those that start the program run a second time on what `npm ci` bundled, and those
// that need a homeserver on that alone.
export default defineConfig({
  test: {
    // On two cores the runner would else take the files one by one.
    maxWorkers: '100%',
    projects: [
      {
        test: {
          name: 'sources',
          testTimeout,
          env,
          include: ['tests/**/*.test.ts'],
          exclude: ['tests/boundaries/canary/**', 'tests/deploy/**', 'tests/matrix/live/**'],
        },
      },
      {
        test: {
          name: 'bundle',
          testTimeout,
          include: ['tests/{console/{ask,run},data/data}.test.ts', 'tests/deploy/**/*.test.ts'],
          globalSetup: ['tests/bundle.ts'],
          env: { ...env, LYEWARD_START: 'dist' },
        },
      },
      {
        test: {
          name: 'matrix',
          include: ['tests/matrix/live/**/*.test.ts'],
          globalSetup: ['tests/bundle.ts', 'tests/matrix/synapse/setup.ts'],
          env: { LYEWARD_START: 'dist' },
          testTimeout: 120_000,
          hookTimeout: 120_000,
          // These wait for servers and clocks most of the time.
          maxWorkers: 4,
          sequence: { groupOrder: 1 },
        },
      },
    ],
  },
});
