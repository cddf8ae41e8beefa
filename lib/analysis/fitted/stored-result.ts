import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { Starts } from '../fitting/warm-fit';

export type StoredResult<T> = {
  readonly result: T;
  readonly dataVersion: string;
  /** Instant, ISO 8601. */
  readonly fittedAt: string;
};

/**
 * Raised whenever the shape of a stored answer changes, so that a newer program never reads what an older one stored: the
 * question is then worked out anew.
 */
const answerShape = 13;

const storedAs = (question: string) => `${question} ${answerShape}`;

/** Which answer: the question, what was asked of it (a query string), and the site whose part it is, if it is a part. */
export type ResultKey = { readonly question: string; readonly asked: string; readonly siteId: string | null };

/** The last answer that was stored, as far as the actor may read it. Its shape is that of the one who stored it. */
export async function readStoredResult<T>(
  { db, actor }: ReadContext,
  { question, asked, siteId }: ResultKey,
): Promise<StoredResult<T> | undefined> {
  const [row] = await db.$queryRaw<{ result: unknown; data_version: string; fitted_at: Date }[]>`
    select result, data_version, fitted_at from fitted_result
    where network_id = ${actor.networkId}::uuid and question = ${storedAs(question)} and asked = ${asked}
      and site_id is not distinct from ${siteId}::uuid`;
  if (row === undefined) return undefined;
  return {
    result: row.result as T,
    dataVersion: row.data_version,
    fittedAt: row.fitted_at.toISOString(),
  };
}

/** Where the searches of the last answer to a question ended, and from which state of the records. */
export async function readStarts(
  { db, actor }: ReadContext,
  { question, asked, siteId }: ResultKey,
): Promise<{ readonly dataVersion: string; readonly starts: Starts } | undefined> {
  const [row] = await db.$queryRaw<{ data_version: string; starts: Starts | null }[]>`
    select data_version, starts from fitted_result
    where network_id = ${actor.networkId}::uuid and question = ${storedAs(question)} and asked = ${asked}
      and site_id is not distinct from ${siteId}::uuid`;
  return row && { dataVersion: row.data_version, starts: row.starts ?? {} };
}

/** Overwrites the answer; of two that finish at once the later one stays. */
export async function storeResult(
  { db, actor }: ReadContext,
  { question, asked, siteId }: ResultKey,
  { result, dataVersion, fittedAt }: StoredResult<unknown>,
  starts?: Starts,
): Promise<void> {
  const json = JSON.stringify(result);
  const from = starts === undefined ? null : JSON.stringify(starts);
  await db.$executeRaw`
    insert into fitted_result (network_id, question, asked, site_id, data_version, result, fitted_at, starts)
    values (${actor.networkId}::uuid, ${storedAs(question)}, ${asked}, ${siteId}::uuid, ${dataVersion}, ${json}::jsonb,
      ${fittedAt}::timestamptz, ${from}::jsonb)
    on conflict (network_id, question, asked, site_id) do update
      set data_version = excluded.data_version, result = excluded.result, fitted_at = excluded.fitted_at,
        starts = excluded.starts`;
}
