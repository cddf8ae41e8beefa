import type { Client } from 'pg';
import type { NemesisLog } from './nemesis-run';

export type Verdict = {
  readonly entries: number;
  readonly acknowledged: number;
  /** Acknowledged, and not in the database. */
  readonly lost: number;
  /** More than one record of one entry. */
  readonly doubled: number;
  /** Records that nobody wrote. */
  readonly invented: number;
  /** Written and never acknowledged although everything was well in the end. */
  readonly stuck: number;
  /** Taken back and still counted, or counted out and never taken back. */
  readonly wronglyStanding: number;
};

type Row = { note: string | null; id: string; voided: boolean };

/** Compares what phones wrote and were told with what the database holds of a batch; each note is its entry's id. */
export async function checkRecords(admin: Client, batchId: string, log: NemesisLog): Promise<Verdict> {
  const { rows } = await admin.query<Row>(
    `select note, id::text, voided_at is not null as voided from look where batch_id = $1
     union all select w.note, w.id::text, w.voided_at is not null from weighing w
       where exists (select from weighing_line l where l.weighing_id = w.id and l.batch_id = $1)`,
    [batchId],
  );
  const byEntry = new Map<string, Row[]>();
  for (const row of rows) byEntry.set(row.note ?? '', [...(byEntry.get(row.note ?? '') ?? []), row]);
  const standing = (id: string) => byEntry.get(id)?.some(({ voided }) => !voided) ?? false;
  return {
    entries: log.made.size,
    acknowledged: log.acknowledged.size,
    lost: [...log.acknowledged].filter((id) => !byEntry.has(id)).length,
    doubled: [...byEntry.values()].filter((records) => records.length > 1).length,
    invented: [...byEntry.keys()].filter((id) => !log.made.has(id)).length,
    stuck: [...log.made.keys()].filter((id) => !log.acknowledged.has(id)).length,
    wronglyStanding: [...log.acknowledged].filter((id) => standing(id) === log.undone.has(id)).length,
  };
}

export const faultless = ({ lost, doubled, invented, stuck, wronglyStanding }: Verdict): boolean =>
  lost + doubled + invented + stuck + wronglyStanding === 0;
