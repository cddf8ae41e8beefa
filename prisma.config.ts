import { defineConfig } from 'prisma/config';

// Prisma downloads a native engine before it generates anything, and stops where it cannot. Generating needs no
// engine at all, so any file that exists will do; migrations run through lib/database/migrate.
process.env.PRISMA_SCHEMA_ENGINE_BINARY ??= process.execPath;
process.env.CHECKPOINT_DISABLE ??= '1';

export default defineConfig({ schema: 'prisma/schema.prisma', migrations: { path: 'prisma/migrations' } });
