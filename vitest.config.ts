import path from 'node:path';
import { defineConfig } from 'vitest/config';

const root = import.meta.dirname;

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
    include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'],
    testTimeout: 20_000,
  },
});
