import { readFileSync } from 'node:fs';
import { z } from 'zod';

const file = z.object({
  cases: z.array(
    z.object({
      id: z.string(),
      input: z.object({ data: z.record(z.string(), z.array(z.union([z.string(), z.number(), z.null()]))) }),
    }),
  ),
});

/** Columns of a published data set kept with the reference values. */
export function dataSet(name: string, id: string) {
  const path = new URL(`../../reference/data/${name}.json`, import.meta.url);
  const found = file.parse(JSON.parse(readFileSync(path, 'utf8'))).cases.find((own) => own.id === id);
  if (!found) throw new Error(`no data set ${id}`);
  const column = (key: string) => found.input.data[key] ?? [];
  return { text: (key: string) => column(key).map(String), number: (key: string) => column(key).map(Number) };
}
