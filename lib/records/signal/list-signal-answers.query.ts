import 'server-only';
import type { ReadContext } from '@/lib/access/context';

/** What was answered to a signal. */
export type SignalAnswerView = {
  readonly recordId: string;
  readonly answer: 'seen' | 'explained';
  readonly words: string | null;
  readonly by: string | null;
  /** Instant, ISO 8601. */
  readonly at: string;
};

/** The answers that stand, by the key of their signal. */
export async function listSignalAnswers(
  { db, actor }: ReadContext,
  keys: readonly string[],
): Promise<ReadonlyMap<string, SignalAnswerView>> {
  const rows = await db.$queryRaw<(Omit<SignalAnswerView, 'at'> & { key: string; at: Date })[]>`
    select signal_key as key, id::text as "recordId", answer::text, words, answered_at as at,
      app.colleague_name(answered_by_id) as by
    from signal_answer where network_id = ${actor.networkId}::uuid and voided_at is null and answer <> 'open'
      and signal_key = any (${[...keys]}::text[])`;
  return new Map(rows.map(({ key, at, ...row }) => [key, { ...row, at: at.toISOString() }]));
}
