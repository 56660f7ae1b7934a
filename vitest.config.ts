import { defineConfig } from 'vitest/config';

// Every test runs on the sources; those that start the program run a second time on what `npm ci` bundled.
export default defineConfig({
  test: {
    projects: [
      {
        test: {
          name: 'sources',
          include: ['tests/**/*.test.ts'],
          exclude: ['tests/boundaries/canary/**', 'tests/deploy/**'],
        },
      },
      {
        test: {
          name: 'bundle',
          include: ['tests/console/{ask,run}.test.ts', 'tests/deploy/**/*.test.ts'],
          globalSetup: ['tests/bundle.ts'],
          env: { LYEWARD_START: 'dist' },
        },
      },
    ],
  },
});
