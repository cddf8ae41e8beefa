import { batchFilterInput } from '@/lib/records/batch/batch-filter.input';
import { findLastStarted } from '@/lib/records/batch/find-last-started.query';
import { getBatch } from '@/lib/records/batch/get-batch.query';
import { getBatchStanding } from '@/lib/records/batch/get-batch-standing.query';
import { getRepeat } from '@/lib/records/batch/get-repeat.query';
import { listBatches } from '@/lib/records/batch/list-batches.query';
import { listSourceBatches } from '@/lib/records/batch/list-source-batches.query';
import { listStartChoices } from '@/lib/records/batch/list-start-choices.query';
import { listStartFacts } from '@/lib/records/batch/list-start-facts.query';
import { compareEntry } from '@/lib/records/entry/compare-entry.query';
import { listHistory } from '@/lib/records/history/list-history.query';
import { listChoices } from '@/lib/records/network/list-choices.query';
import { listPeople } from '@/lib/records/person/list-people.query';
import { listSettings } from '@/lib/records/settings/list-settings.query';
import { listSuitability } from '@/lib/records/settings/list-suitability.query';
import { getShed } from '@/lib/records/shed/get-shed.query';
import { listOpenBatches } from '@/lib/records/shed/list-open-batches.query';
import { findSites } from '@/lib/records/site/find-sites.query';
import { getSite } from '@/lib/records/site/get-site.query';
import { listFormSites } from '@/lib/records/site/list-form-sites.query';
import { listSiteNames } from '@/lib/records/site/list-site-names.query';
import { listSites } from '@/lib/records/site/list-sites.query';
import { siteSearchInput } from '@/lib/records/site/site-search.input';
import { getSpawnLot } from '@/lib/records/spawn-lot/get-spawn-lot.query';
import { listSpawnLots } from '@/lib/records/spawn-lot/list-spawn-lots.query';
import { getSubstrateLot } from '@/lib/records/substrate-lot/get-substrate-lot.query';
import { listSubstrateLots } from '@/lib/records/substrate-lot/list-substrate-lots.query';
import { listDue } from '@/lib/records/today/list-due.query';
import { getTreatment } from '@/lib/records/treatment/get-treatment.query';
import { listTreatments } from '@/lib/records/treatment/list-treatments.query';
import { getVoidable } from '@/lib/records/void/get-voidable.query';
import { getWeighing } from '@/lib/records/weighing/get-weighing.query';
import { listWeighableBatches } from '@/lib/records/weighing/list-weighable-batches.query';
import { listWeighings } from '@/lib/records/weighing/list-weighings.query';
import { weighingFilterInput } from '@/lib/records/weighing/weighing-filter.input';
import { getReport } from '@/lib/report/get-report.query';
import { listReports } from '@/lib/report/list-reports.query';
import { openRows } from './open-rows';
import { query } from './operation-rows';
import { reportQueryRows } from './report-rows';
import { now } from './world';

const some = (answer: unknown) => answer !== undefined;
const none = { of: null, after: null };

/** Every query, and who sees the record of Mill Lane (or, for lots and choices, of the network) through it. */
export const queryRows = [
  query('records/batch/get-batch.query', 'yy---', (c, w) => getBatch(c, w.batch, now), some),
  query('records/batch/get-batch-standing.query', 'yy---', (c, w) => getBatchStanding(c, w.batch, now), some),
  query(
    'records/batch/list-batches.query',
    'yy---',
    (c) => listBatches(c, batchFilterInput.parse({}), now),
    (a, w) => JSON.stringify(a).includes(w.batch),
  ),
  query(
    'records/batch/list-start-choices.query',
    'yyy--',
    (c) => listStartChoices(c),
    (a, w) => JSON.stringify(a).includes(w.stock.straw),
  ),
  query(
    'records/batch/list-start-facts.query',
    'yyy--',
    async (c) => listStartFacts(c, await listStartChoices(c)),
    (a, w) => JSON.stringify(a).includes(w.stock.straw),
  ),
  query(
    'records/batch/find-last-started.query',
    'yy---',
    (c) => findLastStarted(c),
    (a, w) => a?.id === w.batch,
  ),
  query('records/batch/get-repeat.query', 'yy---', (c, w) => getRepeat(c, w.batch, now), some),
  query(
    'records/batch/list-source-batches.query',
    'yy---',
    (c) => listSourceBatches(c),
    (a, w) => JSON.stringify(a).includes(w.batch),
  ),
  query(
    'records/entry/compare-entry.query',
    'yy---',
    (c, w) => compareEntry(c, { id: w.look, kind: 'look', input: { batchId: w.batch }, madeAt: now }),
    some,
  ),
  query(
    'records/history/list-history.query',
    'yy---',
    (c, w) => listHistory(c, w.batch),
    (a) => a.length > 0,
  ),
  query(
    'records/network/list-choices.query',
    'yyy--',
    (c) => listChoices(c),
    (a, w) => JSON.stringify(a).includes(w.stock.oyster),
  ),
  query(
    'records/person/list-people.query',
    'y----',
    (c) => listPeople(c),
    (a, w) => JSON.stringify(a).includes(w.people.member.personId),
  ),
  query(
    'records/settings/list-settings.query',
    'y----',
    (c) => listSettings(c),
    (a, w) => JSON.stringify(a ?? '').includes(w.stock.oyster),
  ),
  query(
    'records/settings/list-suitability.query',
    'yyy--',
    (c) => listSuitability(c),
    (a, w) => a.rows.some(({ speciesId }) => speciesId === w.stock.oyster),
  ),
  query(
    'records/shed/list-open-batches.query',
    'yy---',
    (c) => listOpenBatches(c),
    (a, w) => a.some(({ id }) => id === w.batch),
  ),
  query(
    'records/shed/get-shed.query',
    'yy---',
    (c) => getShed(c, now),
    (a, w) => a.batches.some(({ id }) => id === w.batch) || JSON.stringify(a.due).includes(w.batch),
  ),
  query('records/site/get-site.query', 'yy---', (c, w) => getSite(c, w.people.millLane), some),
  query(
    'records/site/list-sites.query',
    'yy---',
    (c) => listSites(c),
    (a, w) => JSON.stringify(a).includes(w.people.millLane),
  ),
  query(
    'records/site/list-site-names.query',
    'yy---',
    (c) => listSiteNames(c, null),
    (a, w) => a.some(({ id }) => id === w.people.millLane),
  ),
  query(
    'records/site/list-form-sites.query',
    'yy---',
    (c) => listFormSites(c, { asked: null }),
    (a, w) => a.sites.some(({ id }) => id === w.people.millLane),
  ),
  query(
    'records/site/find-sites.query',
    'yy---',
    (c) => findSites(c, siteSearchInput.parse({ siteName: 'mill' })),
    (a, w) => a.sites.some(({ id }) => id === w.people.millLane),
  ),
  query(
    'records/spawn-lot/get-spawn-lot.query',
    'yyy--',
    (c, w) => getSpawnLot(c, w.stock.oysterSpawn),
    some,
  ),
  query(
    'records/spawn-lot/list-spawn-lots.query',
    'yyy--',
    (c) => listSpawnLots(c, none),
    (a, w) => JSON.stringify(a).includes(w.stock.oysterSpawn),
  ),
  query(
    'records/substrate-lot/get-substrate-lot.query',
    'yyy--',
    (c, w) => getSubstrateLot(c, w.stock.straw),
    some,
  ),
  query(
    'records/substrate-lot/list-substrate-lots.query',
    'yyy--',
    (c) => listSubstrateLots(c, none),
    (a, w) => JSON.stringify(a).includes(w.stock.straw),
  ),
  query(
    'records/today/list-due.query',
    'yy---',
    (c) => listDue(c, now),
    (a, w) => JSON.stringify(a).includes(w.batch),
  ),
  query(
    'records/treatment/get-treatment.query',
    'yy---',
    (c, w) => getTreatment(c, w.stock.bathRun, now),
    some,
  ),
  query(
    'records/treatment/list-treatments.query',
    'yy---',
    (c) => listTreatments(c, { site: null, method: null, state: null, after: null }),
    (a, w) => JSON.stringify(a).includes(w.stock.bathRun),
  ),
  query('records/void/get-voidable.query', 'yy---', (c, w) => getVoidable(c, 'batch', w.batch), some),
  query('records/weighing/get-weighing.query', 'yy---', (c, w) => getWeighing(c, w.weighing), some),
  query(
    'records/weighing/list-weighable-batches.query',
    'yy---',
    (c) => listWeighableBatches(c, { now }),
    (a, w) => JSON.stringify(a).includes(w.batch),
  ),
  query(
    'records/weighing/list-weighings.query',
    'yy---',
    (c) => listWeighings(c, weighingFilterInput.parse({})),
    (a, w) => JSON.stringify(a).includes(w.weighing),
  ),
  query('report/get-report.query', 'yyyy-', (c, w) => getReport(c, w.published), some),
  query(
    'report/list-reports.query',
    'yyyy-',
    (c) => listReports(c),
    (a, w) => JSON.stringify(a).includes(w.published),
  ),
  ...openRows,
  ...reportQueryRows,
  query('report/get-report.query', 'y----', (c, w) => getReport(c, w.draft), some),
];
