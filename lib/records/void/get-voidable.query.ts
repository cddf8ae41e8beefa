import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { VoidableKind } from './void-record.input';
import { voidableTable } from './voidable-table';

/** The revision of a record that may be voided; undefined when it is not there, not yours or voided already. */
export async function getVoidable(
  { db }: ReadContext,
  kind: VoidableKind,
  id: string,
): Promise<{ revision: number } | undefined> {
  const standing = await voidableTable(db, kind).find(id);
  return standing && standing.voidedAt === null ? { revision: standing.revision } : undefined;
}
