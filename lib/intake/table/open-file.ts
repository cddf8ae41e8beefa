import 'server-only';
import { z } from 'zod';
import type { ReadContext } from '@/lib/access/context';
import { recordTableKinds } from '@/lib/growing/record-table-layout';
import { storedLayout } from './layout-input';
import type { OpenFile } from './rows-to-take';

const kind = z.enum(recordTableKinds);
const choices = z.record(z.string(), z.string());

/** A file that the actor may see, as far as reading its rows needs it; undefined for any other. */
export async function openFile({ db }: ReadContext, id: string): Promise<OpenFile | undefined> {
  const row = z.uuid().safeParse(id).success && (await db.intakeFile.findFirst({ where: { id } }));
  if (!row) return undefined;
  return {
    id: row.id,
    kind: kind.parse(row.kind),
    siteId: row.siteId,
    layout: storedLayout(row.layout),
    choices: choices.parse(row.choices),
    confirmed: row.confirmed,
  };
}
