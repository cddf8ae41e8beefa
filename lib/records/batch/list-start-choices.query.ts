import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { asCalendarDate } from '../fields/stored-date';
import { listChoices } from '../network/list-choices.query';
import { sitesAsShown } from '../sharing/sites-as-shown';
import { type FormSites, listFormSites } from '../site/list-form-sites.query';
import { latestRuns } from './latest-runs';
import { latestSpawnLots } from './latest-spawn-lots';
import { latestSubstrateLots } from './latest-substrate-lots';

type LocalName = { readonly en: string; readonly es: string };

type Ask = {
  readonly proposedRunId?: string | null;
  /** Where the form has asked for its site before; else every open site. */
  readonly formSites?: FormSites;
};

/**
 * What a new batch can be made of: the network's species and methods, the latest lots and runs, and a run proposed. Where
 * there are too many sites to list, what the site of the form has comes first.
 */
export async function listStartChoices(context: ReadContext, { proposedRunId = null, formSites }: Ask = {}) {
  const { db } = context;
  const choices = await listChoices(context);
  const { sites, many, chosen } = formSites ?? (await listFormSites(context, { asked: null, open: true }));
  const lots = await latestSubstrateLots(context, chosen?.id);
  const spawn = await latestSpawnLots(context, chosen?.id);
  const latest = await latestRuns(context, chosen?.id);
  // Who may be named as having started a batch, at any of the sites listed.
  const colleagues = await db.$queryRaw<{ id: string; name: string }[]>`
    select distinct one.person_id::text as id, one.person_name as name
    from unnest(${sites.map(({ id }) => id)}::uuid[]) as site (id), app.site_colleagues(site.id) as one
    order by name, id`;
  const missing = proposedRunId !== null && !latest.some(({ id }) => id === proposedRunId);
  const runs = missing
    ? [
        ...(await db.treatmentRun.findMany({
          where: { id: proposedRunId, voidedAt: null },
          include: { method: true },
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
    sites,
    many,
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
