import 'server-only';
import { z } from 'zod';
import type { ReadContext } from '@/lib/access/context';
import { type RecordTableKind, recordTableKinds } from '@/lib/growing/record-table-layout';
import { type IntakeState, stateNow } from './running';

export type IntakeFileLine = {
  readonly id: string;
  readonly kind: RecordTableKind;
  readonly fileName: string;
  readonly siteName: string | null;
  readonly createdAt: string;
  readonly state: IntakeState;
  readonly rows: number;
};

const kind = z.enum(recordTableKinds);
const mostShown = 50;

/** The tables that the actor may see, newest first. */
export async function listFiles({ db }: ReadContext, now: Date): Promise<readonly IntakeFileLine[]> {
  const rows = await db.intakeFile.findMany({
    orderBy: { id: 'desc' },
    take: mostShown,
    include: { site: true },
  });
  return rows.map((row) => ({
    id: row.id,
    kind: kind.parse(row.kind),
    fileName: row.fileName,
    siteName: row.site?.name ?? null,
    createdAt: row.createdAt.toISOString(),
    state: stateNow(row, now),
    rows: row.rowCount,
  }));
}
