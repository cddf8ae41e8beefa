import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { Batch, Prisma } from '@/lib/database/generated/client';
import type { ContainerKind } from '@/lib/database/generated/enums';
import { todayInZone } from '@/lib/growing/calendar-date';
import { asCalendarDate } from '../fields/stored-date';
import { tendedSites } from '../today/tended-sites';
import type { BatchFilter } from './batch-filter.input';
import type { LocalName } from './batch-view';
import { batchWhere } from './batch-where';
import { type ContainerYield, containerYield, type YieldedBatch } from './container-yield';
import { type Place, readPlace, writePlace } from './page-cursor';

/** On a phone each batch is a block of its own: so many are a dozen screens, and a page has to come over a bad signal. */
export const batchesPerPage = 25;

export type ListedBatch = ContainerYield & {
  readonly id: string;
  readonly code: string;
  readonly siteName: string;
  readonly species: LocalName;
  readonly method: LocalName | null;
  readonly mixedMethod: boolean;
  readonly containerKind: ContainerKind;
  readonly unitCount: number;
  readonly inoculatedOn: string;
  readonly contaminated: number;
  readonly freshGrams: number;
  readonly closedOn: string | null;
  readonly secondLife: boolean;
  readonly voided: boolean;
};

export type BatchList = {
  readonly batches: readonly ListedBatch[];
  /** Places to page on from, as the address writes them; undefined at either end. */
  readonly newer: string | undefined;
  readonly older: string | undefined;
};

/** The first condition follows from the second; it lets the database begin at the place instead of reading up to it. */
function beyond({ inoculatedOn, id }: Place, way: 'lt' | 'gt'): Prisma.BatchWhereInput {
  return {
    inoculatedOn: { [`${way}e` as const]: inoculatedOn },
    OR: [{ inoculatedOn: { [way]: inoculatedOn } }, { inoculatedOn, id: { [way]: id } }],
  };
}

type Listed = Pick<
  Batch,
  'containerKind' | 'unitCount' | 'bedAreaCm2' | 'inoculatedOn' | 'closedOn' | 'noHarvest'
>;

function yielded(row: Listed, freshGrams: number | undefined): YieldedBatch {
  const { containerKind, unitCount, bedAreaCm2 } = row;
  const unsaid = freshGrams === undefined && row.closedOn !== null && row.noHarvest !== 'none_picked';
  return {
    ...{ containerKind, unitCount, bedAreaCm2 },
    inoculatedOn: asCalendarDate(row.inoculatedOn),
    closedOn: row.closedOn === null ? null : asCalendarDate(row.closedOn),
    freshGrams: unsaid ? null : (freshGrams ?? 0),
    anyWeighed: freshGrams !== undefined,
  };
}

/** Batches that the actor may see, latest inoculated first, a page at a time. */
export async function listBatches(
  { db, actor }: ReadContext,
  filter: BatchFilter,
  now: Date,
): Promise<BatchList> {
  const sites = tendedSites(actor, undefined);
  const before = readPlace(filter.before);
  const after = before ? undefined : readPlace(filter.after);
  const order = before ? 'asc' : 'desc';
  const rows = await db.batch.findMany({
    where: {
      AND: [
        batchWhere(filter),
        sites === null ? {} : { siteId: { in: sites } },
        after ? beyond(after, 'lt') : before ? beyond(before, 'gt') : {},
      ],
    },
    include: { site: true, species: true, method: true },
    orderBy: [{ inoculatedOn: order }, { id: order }],
    take: batchesPerPage + 1,
  });
  const more = rows.length > batchesPerPage;
  const shown = rows.slice(0, batchesPerPage);
  if (before) shown.reverse();
  const ids = shown.map(({ id }) => id);
  const where = { batchId: { in: ids }, voidedAt: null };
  const found = await db.finding.groupBy({ by: ['batchId'], where, _sum: { units: true } });
  const weighed = await db.weighingLine.groupBy({
    by: ['batchId'],
    where: { ...where, weighing: { voidedAt: null } },
    _sum: { freshGrams: true },
  });
  const contaminated = new Map(found.map(({ batchId, _sum }) => [batchId, _sum.units ?? 0]));
  const fresh = new Map(weighed.map(({ batchId, _sum }) => [batchId, _sum.freshGrams ?? 0]));
  const [first] = shown;
  const last = shown.at(-1);
  return {
    batches: shown.map((row) => ({
      ...containerYield(yielded(row, fresh.get(row.id)), todayInZone(row.site.timeZone, now)),
      id: row.id,
      code: row.code,
      siteName: row.site.name,
      species: { en: row.species.nameEn, es: row.species.nameEs },
      method: row.method === null ? null : { en: row.method.nameEn, es: row.method.nameEs },
      mixedMethod: row.mixedMethod,
      containerKind: row.containerKind,
      unitCount: row.unitCount,
      inoculatedOn: asCalendarDate(row.inoculatedOn),
      contaminated: contaminated.get(row.id) ?? 0,
      freshGrams: fresh.get(row.id) ?? 0,
      closedOn: row.closedOn === null ? null : asCalendarDate(row.closedOn),
      secondLife: row.secondLife,
      voided: row.voidedAt !== null,
    })),
    newer: first && (before ? more : after !== undefined) ? writePlace(first) : undefined,
    older: last && (before ? true : more) ? writePlace(last) : undefined,
  };
}
