import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { ContainerKind, Language } from '@/lib/database/generated/enums';
import { asCalendarDate } from '../fields/stored-date';

/** A batch that can be repeated, as much of it as tells which one it is. */
export type LastStarted = {
  readonly id: string;
  readonly code: string;
  readonly containerKind: ContainerKind;
  readonly unitCount: number;
  readonly species: Readonly<Record<Language, string>>;
  readonly inoculatedOn: string;
};

/** Second lives begin from their own spent units, and nothing begins at a site that is closed. */
export const repeatable = { voidedAt: null, secondLife: false, site: { voidedAt: null, closedOn: null } };

/** The last batch to repeat: the actor's own latest, else the latest of the sites that they see; of one site where it is given. */
export async function findLastStarted(
  { db, actor }: ReadContext,
  at?: string,
): Promise<LastStarted | undefined> {
  const latest = {
    select: {
      ...{ id: true, code: true, containerKind: true, unitCount: true, inoculatedOn: true },
      species: { select: { nameEn: true, nameEs: true } },
    },
    orderBy: [{ inoculatedOn: 'desc' as const }, { id: 'desc' as const }],
  };
  const there = { ...repeatable, ...(at === undefined ? {} : { siteId: at }) };
  const row =
    (await db.batch.findFirst({ where: { ...there, startedById: actor.personId }, ...latest })) ??
    (await db.batch.findFirst({ where: there, ...latest }));
  if (row === null) return undefined;
  const { species, inoculatedOn, ...batch } = row;
  return {
    ...batch,
    species: { en: species.nameEn, es: species.nameEs },
    inoculatedOn: asCalendarDate(inoculatedOn),
  };
}
