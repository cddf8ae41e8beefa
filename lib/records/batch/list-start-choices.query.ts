import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { asCalendarDate } from '../fields/stored-date';
import { listChoices } from '../network/list-choices.query';
import { sitesAsShown } from '../sharing/sites-as-shown';
import { runsInSight } from '../treatment/runs-in-sight';

const mostLots = 100;
const mostRuns = 60;

type LocalName = { readonly en: string; readonly es: string };

/** What a new batch can be made of: the network's species and methods, the latest lots and runs, and a run proposed. */
export async function listStartChoices(context: ReadContext, proposedRunId: string | null = null) {
  const { db } = context;
  const choices = await listChoices(context);
  const sites = await db.site.findMany({
    where: { voidedAt: null, closedOn: null, leftAt: null },
    orderBy: { name: 'asc' },
  });
  const lots = await db.substrateLot.findMany({
    where: { voidedAt: null },
    include: { material: true },
    orderBy: [{ receivedOn: 'desc' }, { id: 'desc' }],
    take: mostLots,
  });
  const spawn = await db.spawnLot.findMany({
    where: { voidedAt: null },
    include: { species: true },
    orderBy: { id: 'desc' },
    take: mostLots,
  });
  const withMethod = { method: true };
  const latest = await db.treatmentRun.findMany({
    where: { AND: [{ voidedAt: null }, await runsInSight(context)] },
    include: withMethod,
    orderBy: [{ startedAt: 'desc' }, { id: 'desc' }],
    take: mostRuns,
  });
  // Who may be named as having started a batch, at any of the actor's open sites.
  const colleagues = await db.$queryRaw<{ id: string; name: string }[]>`
    select distinct one.person_id::text as id, one.person_name as name
    from unnest(${sites.map(({ id }) => id)}::uuid[]) as site (id), app.site_colleagues(site.id) as one
    order by name, id`;
  const missing = proposedRunId !== null && !latest.some(({ id }) => id === proposedRunId);
  const runs = missing
    ? [
        ...(await db.treatmentRun.findMany({
          where: { id: proposedRunId, voidedAt: null },
          include: withMethod,
        })),
        ...latest,
      ]
    : latest;
  const siteOf = await sitesAsShown(
    context,
    runs.map(({ siteId }) => siteId),
  );
  const named = (row: { nameEn: string; nameEs: string }): LocalName => ({ en: row.nameEn, es: row.nameEs });
  return {
    ...choices,
    colleagues,
    sites: sites.map(({ id, name, timeZone }) => ({ id, name, timeZone })),
    substrateLots: lots.map((lot) => ({
      id: lot.id,
      code: lot.code,
      material: named(lot.material),
      receivedOn: asCalendarDate(lot.receivedOn),
      sourceName: lot.sourceName,
    })),
    spawnLots: spawn.map((lot) => ({
      id: lot.id,
      code: lot.code,
      species: named(lot.species),
      speciesId: lot.speciesId,
    })),
    runs: runs.map((run) => ({
      id: run.id,
      code: run.code,
      method: named(run.method),
      site: siteOf(run.siteId).shown,
      timeZone: siteOf(run.siteId).timeZone,
      startedAt: run.startedAt,
    })),
  };
}

export type StartChoices = Awaited<ReturnType<typeof listStartChoices>>;
