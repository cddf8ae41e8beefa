import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { lastChange } from '@/lib/access/last-change';
import { voidableTable } from '../void/voidable-table';
import type { EntryRequest } from './entry.input';
import { entryCommands } from './entry-commands';
import type { FactValue } from './entry-fact';
import { storedFacts } from './stored-facts';
import { typedFacts } from './typed-facts';

/** Two versions of a record where they differ: the one in the database and the one of the entry. */
export type EntryComparison = {
  readonly revision: number;
  readonly changedBy: string | null;
  readonly changedAt: string;
  readonly fields: readonly {
    readonly field: string;
    readonly theirs: FactValue | null;
    readonly yours: FactValue | null;
  }[];
};

/** Sets an entry beside the record it would change, field by field; undefined when there is no such record. */
export async function compareEntry(
  context: ReadContext,
  { id, kind, input, madeAt }: Pick<EntryRequest, 'id' | 'kind' | 'input' | 'madeAt'>,
): Promise<EntryComparison | undefined> {
  if (kind === 'undo') return undefined;
  const recordId = typeof input.id === 'string' ? input.id : id;
  const standing = await voidableTable(context.db, entryCommands[kind].table).find(recordId);
  const theirs = await storedFacts[kind](context, recordId);
  if (!standing || !theirs) return undefined;
  const yours = await typedFacts[kind](context, input);
  const changed = await lastChange(context, recordId);
  const fields = [...new Set([...theirs.keys(), ...yours.keys()])].flatMap((field) => {
    const pair = { field, theirs: theirs.get(field) ?? null, yours: yours.get(field) ?? null };
    // What the entry leaves open is not a difference: the server fills it in.
    return yours.has(field) && JSON.stringify(pair.theirs) !== JSON.stringify(pair.yours) ? [pair] : [];
  });
  return {
    revision: standing.revision,
    changedBy: changed?.by ?? null,
    changedAt: changed?.at ?? madeAt.toISOString(),
    fields,
  };
}
