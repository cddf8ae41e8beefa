import type { Actor } from '@/lib/access/actor';
import type { ReadContext } from '@/lib/access/context';
import { readAs } from '@/lib/access/scoped-db';
import { parseQuestion } from '@/lib/analysis/adjusted/question-scope.input';
import { readQuestionScope } from '@/lib/analysis/adjusted/read-question-data';
import { readStoredResult } from '@/lib/analysis/fitted/stored-result';
import { lotFilterInput } from '@/lib/records/fields/lot-filter.input';
import { findCountedSites } from '@/lib/records/site/find-counted-sites.query';
import { findSites } from '@/lib/records/site/find-sites.query';
import { listSiteNames } from '@/lib/records/site/list-site-names.query';
import { listSites } from '@/lib/records/site/list-sites.query';
import { siteSearchInput } from '@/lib/records/site/site-search.input';
import { listSpawnLots } from '@/lib/records/spawn-lot/list-spawn-lots.query';
import { listSubstrateLots } from '@/lib/records/substrate-lot/list-substrate-lots.query';
import { countOpen } from '@/lib/records/today/count-open.query';
import { listDue } from '@/lib/records/today/list-due.query';
import { listTreatments } from '@/lib/records/treatment/list-treatments.query';
import { listWeighings } from '@/lib/records/weighing/list-weighings.query';
import { weighingFilterInput } from '@/lib/records/weighing/weighing-filter.input';
import type { PageRead } from './page-reads';

const bar = 100;

/** Lists of records, the page of the day, and a question whose answer is stored. */
export async function recordReads(actor: Actor, now: Date): Promise<PageRead[]> {
  const page = (
    name: string,
    address: string,
    read: (context: ReadContext) => Promise<unknown>,
  ): PageRead => ({
    ...{ name, address: () => address, bar },
    read: () => readAs(actor, read),
  });
  const lots = lotFilterInput.parse({});
  const [site] = await readAs(actor, listSites);
  const siteId = site?.id ?? '';
  const wide = (await readAs(actor, (context) => countOpen(context, now))) !== undefined;
  return [
    page('harvests', '/weighings', async (context) => [
      await listWeighings(context, weighingFilterInput.parse({})),
      await listSiteNames(context, null),
    ]),
    page('treatments', '/treatments', async (context) => [
      await listTreatments(context, { site: null, method: null, state: null, after: null }),
      await listSiteNames(context, null),
    ]),
    page('spawn lots', '/spawn-lots', (context) => listSpawnLots(context, lots)),
    page('substrate lots', '/substrate-lots', (context) => listSubstrateLots(context, lots)),
    page('sites', '/sites', (context) => findCountedSites(context, siteSearchInput.parse({}))),
    page('a site to choose', '/sites/choose?next=/batches', (context) =>
      findSites(context, siteSearchInput.parse({})),
    ),
    page('today, of every site', '/today', async (context) => [
      await countOpen(context, now),
      await listDue(context, now, { runsOnly: wide }),
    ]),
    page('today, of one site', `/today?site=${siteId}`, async (context) => [
      await countOpen(context, now, { siteId }),
      await listDue(context, now, { siteId }),
    ]),
    page('a question, its answer stored', '/questions/losses', async (context) => {
      await readQuestionScope(context, parseQuestion({}), now);
      await readStoredResult(context, { question: 'losses', asked: '', siteId: null });
    }),
  ];
}
