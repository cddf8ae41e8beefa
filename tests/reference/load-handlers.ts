import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { ReferenceHandler } from './reference-handler';

export type LoadedHandlers = {
  readonly byMethod: ReadonlyMap<string, ReferenceHandler>;
  /** Handler files that could not be loaded, with the reason. */
  readonly broken: readonly string[];
};

/** Loads every file of `handlers/`; one that does not load is reported and its method counts as unknown. */
export async function loadHandlers(): Promise<LoadedHandlers> {
  const folder = new URL('./handlers/', import.meta.url);
  const byMethod = new Map<string, ReferenceHandler>();
  const broken: string[] = [];
  for (const name of readdirSync(fileURLToPath(folder))
    .filter((file) => file.endsWith('.ts'))
    .sort()) {
    try {
      const loaded: { handler?: ReferenceHandler } = await import(new URL(name, folder).href);
      if (loaded.handler === undefined) broken.push(`${name}: exports no handler`);
      else byMethod.set(loaded.handler.method, loaded.handler);
    } catch (error) {
      broken.push(`${name}: ${error instanceof Error ? error.message : String(error)}`);
    }
  }
  return { byMethod, broken };
}
