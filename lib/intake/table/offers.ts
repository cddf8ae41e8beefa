import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { asCalendarDate } from '@/lib/records/fields/stored-date';
import type { ReferenceKind } from './table-field';

/** A record to choose: its name, what it is and since when (YYYY-MM-DD), where its name alone says little. */
export type OfferedRecord = {
  readonly value: string;
  readonly label: string;
  readonly about?: string;
  readonly on?: string;
  /** What it is, in both languages, by which those that a text may mean come first. */
  readonly names?: readonly string[];
};

const live = { voidedAt: null };
const mostOffered = 500;
const newest = { orderBy: { id: 'desc' as const }, take: mostOffered };

type Two = { readonly nameEn: string; readonly nameEs: string };

function inLanguage({ actor }: ReadContext) {
  return ({ nameEn, nameEs }: Two) => (actor.language === 'es' ? nameEs : nameEn);
}

async function namedRecords(
  context: ReadContext,
  of: 'species' | 'material' | 'method',
): Promise<readonly OfferedRecord[]> {
  const { db } = context;
  const name = inLanguage(context);
  const rows: readonly (Two & { id: string })[] =
    of === 'species'
      ? await db.species.findMany({ where: live })
      : of === 'material'
        ? await db.material.findMany({ where: live })
        : await db.method.findMany({ where: live });
  return rows
    .map((row) => ({ value: row.id, label: name(row) }))
    .sort((a, b) => a.label.localeCompare(b.label));
}

/** The methods first, then the runs of these sites, newest first; of all sites where none is named. */
async function treatments(context: ReadContext, sites: readonly string[]): Promise<readonly OfferedRecord[]> {
  const name = inLanguage(context);
  const methods = await namedRecords(context, 'method');
  const runs = await context.db.treatmentRun.findMany({
    ...newest,
    where: { ...live, ...(sites.length === 0 ? {} : { siteId: { in: [...sites] } }) },
    orderBy: { startedAt: 'desc' },
    include: { method: true, site: true },
  });
  return [
    ...methods.map(({ value, label }) => ({ value: `method:${value}`, label })),
    ...runs.map(({ id, code, method, startedAt, site }) => ({
      ...{ value: `run:${id}`, label: code, about: name(method) },
      on: new Intl.DateTimeFormat('sv-SE', { timeZone: site.timeZone }).format(startedAt),
    })),
  ];
}

/** Lots that came to one of these sites before the others, newest first. */
async function lots(
  context: ReadContext,
  of: 'substrate_lot' | 'spawn_lot',
  sites: readonly string[],
): Promise<readonly OfferedRecord[]> {
  const name = inLanguage(context);
  const here = { receipts: { some: { siteId: { in: [...sites] }, voidedAt: null } } };
  const found = async (where: object) => {
    if (of === 'substrate_lot') {
      const rows = await context.db.substrateLot.findMany({
        ...newest,
        where: { ...live, ...where },
        orderBy: { receivedOn: 'desc' },
        include: { material: true },
      });
      return rows.map(({ id, code, material, receivedOn }) => ({ id, code, what: material, on: receivedOn }));
    }
    const rows = await context.db.spawnLot.findMany({
      ...newest,
      where: { ...live, ...where },
      include: { species: true },
    });
    return rows.map(({ id, code, species, receivedOn, madeOn }) => ({
      ...{ id, code, what: species, on: receivedOn ?? madeOn },
    }));
  };
  const all = [...(sites.length === 0 ? [] : await found(here)), ...(await found({}))];
  const once = new Map(all.map((lot) => [lot.id, lot]));
  return [...once.values()].slice(0, mostOffered).map(({ id, code, what, on }) => ({
    ...{ value: id, label: code, about: name(what), names: [what.nameEn, what.nameEs] },
    ...(on === null ? {} : { on: asCalendarDate(on) }),
  }));
}

/** Records of one kind to choose from where a name was not found; `sites` are those of the table. */
export async function offerRecords(
  context: ReadContext,
  of: ReferenceKind,
  sites: readonly string[],
): Promise<readonly OfferedRecord[]> {
  const { db } = context;
  switch (of) {
    case 'batch': {
      const rows = await db.batch.findMany({ ...newest, where: live, select: { id: true, code: true } });
      return rows
        .map(({ id, code }) => ({ value: id, label: code }))
        .sort((a, b) => a.label.localeCompare(b.label));
    }
    case 'substrate_lot':
    case 'spawn_lot':
      return lots(context, of, sites);
    case 'site': {
      const rows = await db.site.findMany({ where: live, select: { id: true, name: true } });
      return rows
        .map(({ id, name }) => ({ value: id, label: name }))
        .sort((a, b) => a.label.localeCompare(b.label));
    }
    case 'treatment':
      return treatments(context, sites);
    default:
      return namedRecords(context, of);
  }
}
