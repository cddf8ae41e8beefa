import type { ReadContext } from '@/lib/access/context';
import type { SavedQuery } from './saved-table';

const uuid = /^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/i;

/** How the records that a filter names by id are called in a file's name; undefined for what is not there. */
async function codeOf({ db }: ReadContext, name: string, id: string): Promise<string | undefined> {
  const where = { where: { id } };
  if (name === 'site') return (await db.site.findFirst(where))?.code;
  if (name === 'method') return (await db.method.findFirst(where))?.code;
  if (name === 'species') return (await db.species.findFirst(where))?.code;
  if (name === 'batch') return (await db.batch.findFirst(where))?.code;
  if (name === 'place') return (await db.conditionPlace.findFirst(where))?.name;
  if (name === 'of')
    return (await db.species.findFirst(where))?.code ?? (await db.material.findFirst(where))?.code;
  return undefined;
}

const filters = [
  'site',
  'species',
  'container',
  'method',
  'state',
  'from',
  'to',
  'code',
  'voided',
  'batch',
  'place',
  'of',
];
const plain = (text: string) =>
  text
    .normalize('NFD')
    .replaceAll(/[^A-Za-z0-9-]+/g, '-')
    .slice(0, 40);

/** The filter as it stands in the name of a file: `site-MILL_from-2026-01-01`; empty without a filter. */
export async function filterInName(context: ReadContext, query: SavedQuery): Promise<string> {
  const parts: string[] = [];
  for (const name of filters) {
    const value = query[name];
    if (typeof value !== 'string' || value === '') continue;
    const told = uuid.test(value) ? await codeOf(context, name, value) : value;
    if (told !== undefined) parts.push(`${name}-${plain(told)}`);
  }
  return parts.join('_');
}
