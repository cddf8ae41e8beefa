import { readFileSync } from 'node:fs';
import { z } from 'zod';

const entries = z.array(
  z.strictObject({
    method: z.string().describe('exact method text of the file'),
    path: z
      .string()
      .describe('dotted place in expected; * is one part, ** any number; covers what lies below'),
    reason: z.string().min(1),
  }),
);

export type NotOffered = z.infer<typeof entries>[number];

/** What the library chose not to offer, each with its reason. An entry excuses only keys left out of the answer. */
export function readNotOffered(): NotOffered[] {
  return entries.parse(JSON.parse(readFileSync(new URL('./not-offered.json', import.meta.url), 'utf8')));
}

/** The first entry that covers this place of this method's expected values. */
export function findNotOffered(
  list: readonly NotOffered[],
  method: string,
  path: string,
): NotOffered | undefined {
  return list.find((entry) => entry.method === method && pattern(entry.path).test(path));
}

function pattern(path: string): RegExp {
  const parts = path.split('**').map((run) =>
    run
      .split('*')
      .map((text) => text.replace(/[.+?^${}()|[\]\\]/g, '\\$&'))
      .join('[^.]*'),
  );
  return new RegExp(`^${parts.join('.*')}(\\..*)?$`);
}
