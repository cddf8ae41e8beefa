import type { Posted } from '@/lib/base/form-data';
import { isoDateOf } from '@/lib/growing/typed-date';

/** What a quick form holds, nested as the server reads it. */
export type TypedEntry = Posted;

/** The text at a dotted path; '' when nothing stands there. */
export function textAt(typed: TypedEntry, path: string): string {
  let node: Posted | string | string[] | undefined = typed;
  for (const part of path.split('.')) {
    if (node === undefined || typeof node === 'string' || Array.isArray(node)) return '';
    node = node[part];
  }
  return typeof node === 'string' ? node.trim() : '';
}

/** The calendar date that a date field holds: '' when none, undefined when it is no real date. */
export function dayAt(typed: TypedEntry, name: string): string | undefined {
  const quick = textAt(typed, `${name}.quick`);
  if (/^\d{4}-\d{2}-\d{2}$/.test(quick)) return quick;
  const [day, month, year] = ['day', 'month', 'year'].map((part) => textAt(typed, `${name}.${part}`));
  if (!day && !month && !year) return '';
  return isoDateOf(day ?? '', month ?? '', year ?? '');
}
