import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import {
  bindMigrationAwareSqlAdapterFactory,
  type SqlMigrationAwareDriverAdapterFactory,
} from '@prisma/driver-adapter-utils';
import * as binding from '@prisma/schema-engine-wasm/schema_engine_bg';

/** What separates a database from a datamodel: `sql` brings the first to the second, empty when they agree. */
export type SchemaDifference = { agrees: boolean; sql: string };

const start = async () => {
  // The package exports its glue but not its .wasm, which lies beside it.
  const glue = import.meta.resolve('@prisma/schema-engine-wasm/schema_engine_bg');
  const bytes = await readFile(fileURLToPath(new URL('schema_engine_bg.wasm', glue)));
  const { instance } = await WebAssembly.instantiate(bytes, { './schema_engine_bg.js': { ...binding } });
  binding.__wbg_set_wasm(instance.exports);
  const begin = instance.exports.__wbindgen_start;
  if (typeof begin === 'function') begin();
  // Without a registry to write to, a panic of the engine hides its own message.
  Object.assign(globalThis, { PRISMA_WASM_PANIC_REGISTRY: { set_message: console.error } });
};

let started: Promise<void> | undefined;

/**
 * Compares the database behind `adapter` with a Prisma schema, offline: Prisma's own engine compiled to
 * WebAssembly, since its native one is downloaded and may be out of reach.
 *
 * It sees tables, columns, keys, indexes and enums. Policies, functions, triggers and grants are invisible to
 * it and have tests of their own.
 */
export async function compareWithDatamodel(
  adapter: SqlMigrationAwareDriverAdapterFactory,
  schema: { path: string; content: string },
): Promise<SchemaDifference> {
  started ??= start();
  await started;
  const bound = bindMigrationAwareSqlAdapterFactory(adapter);
  const engine = await binding.SchemaEngine.new(
    { datamodels: [[schema.path, schema.content]] },
    () => {},
    bound,
  );
  try {
    const result = await engine.diff({
      from: { tag: 'schemaDatasource', files: [schema], configDir: '.' },
      to: { tag: 'schemaDatamodel', files: [schema] },
      script: true,
      exitCode: true,
      filters: { externalTables: ['public._prisma_migrations'], externalEnums: [] },
    });
    return { agrees: result.exitCode === 0, sql: result.stdout ?? '' };
  } catch (problem) {
    // The engine reports an error of the adapter only by its number in the registry.
    const number = /External error id#(\d+)/.exec(String(problem))?.[1];
    throw number === undefined
      ? problem
      : (bound.errorRegistry.consumeError(Number(number))?.error ?? problem);
  } finally {
    engine.free();
  }
}
