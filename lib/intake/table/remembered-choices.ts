import 'server-only';
import { z } from 'zod';
import type { ReadContext } from '@/lib/access/context';
import type { RecordTableKind } from '@/lib/growing/record-table-layout';
import { fieldsOfKind } from './kinds/fields-of-kind';

const stored = z.record(z.string(), z.string());
const tablesLookedAt = 20;
const mostChoices = 2_000;

/** A lot, a batch or a run is used up: a plain word such as "straw" means another one the next time, a code the same. */
const usedUp = new Set(['substrateLot', 'spawnLot', 'batch']);
const isLasting = (field: string, text: string, value: string) =>
  (!usedUp.has(field) && !value.startsWith('run:')) || /\d/.test(text);

/**
 * What texts were chosen to stand for in earlier tables of the site, of whatever kind and with whatever other columns;
 * the newest choice counts.
 */
export async function rememberedChoices(
  { db }: ReadContext,
  kind: RecordTableKind,
  siteId: string | null,
): Promise<Record<string, string>> {
  const tables = await db.intakeFile.findMany({
    where: { siteId, state: { in: ['checked', 'adding', 'added'] } },
    orderBy: { id: 'desc' },
    take: tablesLookedAt,
    select: { choices: true },
  });
  const names = new Set(fieldsOfKind[kind].map(({ name }) => name));
  const all = tables.reverse().flatMap(({ choices }) => Object.entries(stored.parse(choices)));
  const own = all.filter(([key, value]) => {
    const [field = '', ...text] = key.split(' ');
    return names.has(field) && isLasting(field, text.join(' '), value);
  });
  return Object.fromEntries([...new Map(own)].slice(-mostChoices));
}
