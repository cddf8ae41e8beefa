import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { Signal } from './signal';

/** Codes of the batches and spawn lots that signals name, by id; voided ones too. */
export type SignalNames = { readonly codes: ReadonlyMap<string, string> };

export async function readSignalNames({ db }: ReadContext, signals: readonly Signal[]): Promise<SignalNames> {
  const batches = signals.flatMap((signal) =>
    signal.kind === 'loss' || signal.kind === 'yield' ? [signal.batchId] : [],
  );
  const lots = signals.flatMap((signal) => (signal.kind === 'lot' ? [signal.lotId] : []));
  const select = { id: true, code: true };
  const rows = [
    ...(await db.batch.findMany({ where: { id: { in: batches } }, select })),
    ...(await db.spawnLot.findMany({ where: { id: { in: lots } }, select })),
  ];
  return { codes: new Map(rows.map(({ id, code }) => [id, code])) };
}
