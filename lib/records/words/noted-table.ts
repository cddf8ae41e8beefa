import 'server-only';
import type { ScopedDb } from '@/lib/access/scoped-db';
import type { NotedKind } from './take-out-note.input';

type Noted = { code: string; revision: number; note: string | null; voidedAt: Date | null } | null;
type Table = {
  find: (id: string) => Promise<Noted>;
  empty: (where: { id: string; revision: number }) => Promise<{ count: number }>;
};

/** How to find a record that has a note, and to empty the note: a voided one's, too, since its words stay to be read. */
export function notedTable(db: ScopedDb, kind: NotedKind): Table {
  const select = { code: true, revision: true, note: true, voidedAt: true } as const;
  const data = { note: null };
  switch (kind) {
    case 'batch':
      return {
        find: (id) => db.batch.findFirst({ where: { id }, select }),
        empty: (where) => db.batch.updateMany({ where, data }),
      };
    case 'treatment-run':
      return {
        find: (id) => db.treatmentRun.findFirst({ where: { id }, select }),
        empty: (where) => db.treatmentRun.updateMany({ where, data }),
      };
  }
}
