import path from 'node:path';
import { defineConfig } from 'vitest/config';

const root = import.meta.dirname;

/** Folders whose tests touch no database; everything else gets the server for tests. */
const pure = ['stats', 'growing', 'labels', 'base', 'architecture', 'ui'].map(
  (folder) => `tests/${folder}/**/*.test.{ts,tsx}`,
);

export default defineConfig({
  resolve: {
    alias: {
      '@': root,
      'server-only': path.join(root, 'tests/support/server-only.ts'),
    },
  },
  test: {
    pool: 'forks',
    maxWorkers: 2,
    testTimeout: 20_000,
    hookTimeout: 30_000,
    projects: [
      { extends: true, test: { name: 'pure', include: pure } },
      {
        extends: true,
        test: {
          name: 'database',
          include: ['tests/**/*.test.{ts,tsx}'],
          exclude: pure,
          globalSetup: 'tests/support/database-setup.ts',
        },
      },
    ],
  },
});
