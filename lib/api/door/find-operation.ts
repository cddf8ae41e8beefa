import { z } from 'zod';
import type { Operation } from '../operation/operation';
import { operations } from '../operation/operations';

export type Found =
  | { readonly kind: 'found'; readonly operation: Operation; readonly id: string }
  | { readonly kind: 'not-there' }
  | { readonly kind: 'wrong-method'; readonly allow: string };

const uuid = z.uuid();

/** The id that an address has where a path of the list has `{id}`; undefined when they differ elsewhere. */
function idIn(path: string, segments: readonly string[]): string | undefined {
  const parts = path.slice(1).split('/');
  if (parts.length !== segments.length) return undefined;
  let id = '';
  for (const [index, part] of parts.entries()) {
    const segment = segments[index] ?? '';
    if (part === '{id}') id = segment;
    else if (part !== segment) return undefined;
  }
  return parts.includes('{id}') && !uuid.safeParse(id).success ? undefined : id.toLowerCase();
}

/** Which operation an address and a method name. An id that cannot be one is as one that is not there. */
export function findOperation(method: string, segments: readonly string[]): Found {
  const here = operations.flatMap((operation) => {
    const id = idIn(operation.path, segments);
    return id === undefined ? [] : [{ operation, id }];
  });
  if (here.length === 0) return { kind: 'not-there' };
  const asked = method === 'HEAD' ? 'GET' : method;
  const found = here.find(({ operation }) => operation.method === asked);
  if (found) return { kind: 'found', ...found };
  const allow = [...new Set(here.map(({ operation }) => operation.method))].sort().join(', ');
  return { kind: 'wrong-method', allow };
}
