import { beforeAll, describe, expect, it } from 'vitest';
import type { Actor } from '@/lib/access/actor';
import { readAs, type ScopedDb, writeAs } from '@/lib/access/scoped-db';
import { readBatchPage } from '@/lib/analysis/comparison/read-batch-page';
import { readBatchRows } from '@/lib/analysis/comparison/read-batch-rows';
import { readComparison } from '@/lib/analysis/comparison/read-comparison';
import { readRowsBehind } from '@/lib/analysis/comparison/read-rows-behind';
import { readRowPlace, writeRowPlace } from '@/lib/analysis/comparison/row-place';
import { newId } from '@/lib/base/new-id';
import { ok } from '@/lib/base/result';
import { testDatabase } from '../../support/database';
import { type Growers, growers } from '../../support/growers';
import { type Shed, shed } from '../../support/shed';

const { superuser } = await testDatabase();
const asDate = (date: string) => new Date(`${date}T00:00:00Z`);
const later = new Date('2026-12-31T17:00:00Z');
let people: Growers;
let stock: Shed;

type Batch = Parameters<ScopedDb['batch']['create']>[0]['data'];

function as<T>(actor: Actor, write: (db: ScopedDb) => Promise<T>): Promise<T> {
  return writeAs(actor, {}, async ({ db }) => ok(await write(db))).then((result) => {
    if (result.kind !== 'ok') throw new Error(JSON.stringify(result));
    return result.value;
  });
}

/** Twenty oyster bags of 1 April at Mill Lane out of the bath; judged on 29 April and on 30 June. */
function fill(
  code: string,
  changes: Partial<Batch> = {},
  runs: readonly (string | null)[] = [stock.bathRun],
) {
  return as(people.coordinator, async (db) => {
    const place = { networkId: people.coordinator.networkId, siteId: changes.siteId ?? people.millLane };
    const id = newId();
    const data = {
      ...{ ...place, id, code, speciesId: stock.oyster, containerKind: 'bag', unitCount: 20 },
      ...{ inoculatedOn: asDate('2026-04-01'), methodId: stock.hotWater, moistureSource: 'none' },
      ...{ dryMassFrom: 'mass_before_treatment', dryGrams: 10_000 },
      ...{ contaminationAssessedOn: asDate('2026-04-29'), yieldAssessedOn: asDate('2026-06-30') },
      ...changes,
    } as Batch;
    await db.batch.create({ data });
    for (const treatmentRunId of runs)
      await db.batchComponent.create({
        data: {
          ...{ ...place, id: newId(), batchId: id, substrateLotId: stock.straw, methodId: stock.hotWater },
          ...{ treatmentRunId, role: 'substrate', massStage: 'before_treatment' },
        },
      });
    return { ...place, batchId: id };
  });
}

type Filled = Awaited<ReturnType<typeof fill>>;

function weigh({ batchId, ...place }: Filled, on: string, freshGrams: number, voided = false) {
  return as(people.coordinator, async (db) => {
    const weighingId = newId();
    const gone = voided ? { voidedAt: later, voidReason: 'weighed twice' } : {};
    const data = { ...place, weighedOn: asDate(on), freshGrams, trimState: 'as_picked' } as const;
    await db.weighing.create({ data: { ...data, id: weighingId, ...gone } });
    await db.weighingLine.create({
      data: { ...place, id: newId(), weighingId, batchId, flush: 1, freshGrams },
    });
  });
}

function find({ batchId, ...place }: Filled, on: string, units: number) {
  const seen = { sign: 'green', stage: 'colonising', action: 'discarded' } as const;
  return as(people.coordinator, (db) =>
    db.finding.create({ data: { ...place, batchId, id: newId(), foundOn: asDate(on), units, ...seen } }),
  );
}

function look({ batchId, ...place }: Filled, on: string) {
  return as(people.coordinator, (db) =>
    db.look.create({ data: { ...place, batchId, id: newId(), lookedOn: asDate(on) } }),
  );
}

const year = { from: '2026-01-01', to: '2026-12-31' };
const pageOf = async (now: Date, actor = people.coordinator, query: Record<string, string> = year) => {
  const page = await readAs(actor, (context) => readComparison(context, query, now));
  if (!page) throw new Error('nothing to compare');
  return page;
};

beforeAll(async () => {
  people = await growers(superuser);
  stock = await shed(people);
  const one = await fill('ONE');
  await find(one, '2026-04-20', 2);
  await find(one, '2026-05-20', 3);
  await weigh(one, '2026-06-30', 4_000);
  await weigh(one, '2026-07-01', 500);
  await weigh(one, '2026-06-01', 9_999, true);
  const two = await fill('TWO', { siteId: people.quarry, methodId: stock.untreated }, []);
  await look(two, '2026-04-28');
  await fill('GONE', { voidedAt: later, voidReason: 'entered twice' });
  await fill('LOGS', { containerKind: 'log' }, []);
}, 60_000);

describe('the comparison read from the records', () => {
  it('opens on the species and container most used, from the quarter two years before the latest batch', async () => {
    const { filter } = await pageOf(later, people.coordinator, {});
    const from = '2024-04-01';
    expect(filter).toMatchObject({ species: stock.oyster, container: 'bag', from, to: '2026-04-01' });
  });

  it('adds up findings by the window, at any time, and harvests by the yield day and later', async () => {
    const { comparison } = await pageOf(later);
    const [cell] = comparison.cells.filter((row) => row.site === people.millLane);
    expect(cell).toMatchObject({
      method: stock.hotWater,
      contamination: { kind: 'counts', parts: { numerator: 2, denominator: 20 } },
      contaminationAtAnyTime: { parts: { numerator: 5, denominator: 20 } },
      yield: { kind: 'counts', parts: { numerator: 4_000, denominator: 10_000 } },
      laterGrams: 500,
    });
    expect(cell?.contamination.leftOut).toEqual([{ reason: 'voided', batches: 1, units: 20 }]);
  });

  it("lets a batch enter by the site's own calendar while nothing is written", async () => {
    const reasonAt = async (instant: string) => {
      const { comparison } = await pageOf(new Date(instant));
      const row = comparison.cells.find(({ site }) => site === people.quarry);
      return row?.contamination.leftOut.map(({ reason }) => reason);
    };
    // 29 April begins in New York at 04:00 UTC.
    expect(await reasonAt('2026-04-29T03:59:00Z')).toEqual(['window-open']);
    expect(await reasonAt('2026-04-29T04:00:00Z')).toEqual(['not-inspected']);
    const kindAt = async (instant: string) =>
      (await pageOf(new Date(instant))).comparison.cells.find(({ site }) => site === people.millLane)?.yield
        .kind;
    expect(await kindAt('2026-06-30T03:59:00Z')).toBe('cannot');
    expect(await kindAt('2026-06-30T04:00:00Z')).toBe('counts');
  });

  it('keeps container kinds apart and narrows by date of inoculation', async () => {
    const logs = await pageOf(later, people.coordinator, { ...year, container: 'log' });
    expect(logs.comparison.total.yield.unit).toBe('grams-per-log-year');
    const early = await pageOf(later, people.coordinator, { from: '2026-01-01', to: '2026-03-31' });
    expect(early.comparison.total.contamination).toMatchObject({ kind: 'cannot', reason: 'no-batches' });
  });

  it('lists the batches behind a cell with what they count for or why they do not', async () => {
    const query = { ...year, method: stock.hotWater, site: people.millLane };
    const behind = await readAs(people.coordinator, (context) => readRowsBehind(context, query, later));
    const byCode = new Map(behind?.rows.map((row) => [row.code, row]));
    expect([...byCode.keys()].sort()).toEqual(['GONE', 'ONE']);
    expect(byCode.get('ONE')).toMatchObject({
      ...{ contaminated: 2, contaminatedAtAnyTime: 5, units: 20, freshGrams: 4_000, over: 10_000, yield: 40 },
      rate: { kind: 'figure', value: 10, method: { code: 'wilson' } },
    });
    expect(behind?.figures.contamination).toMatchObject({ parts: { numerator: 2, denominator: 20 } });
    expect(byCode.get('GONE')).toMatchObject({ contaminationLeftOut: 'voided', yieldLeftOut: 'voided' });
  });

  it('goes through the batches behind a figure page by page, forth and back, each once', async () => {
    for (const [code, on] of [
      ['PAGE-1', '2026-04-01'],
      ['PAGE-2', '2026-04-02'],
      ['PAGE-3', '2026-03-02'],
    ] as const)
      await fill(code, { inoculatedOn: asDate(on) });
    const { filter } = await pageOf(later);
    const all = await readAs(people.coordinator, (context) => readBatchPage(context, filter, 100, {}));
    const forth: string[] = [];
    const pages: string[][] = [];
    for (let from = {}, more = true; more; ) {
      const page = await readAs(people.coordinator, (context) => readBatchPage(context, filter, 2, from));
      pages.push(page.batches.map(({ id }) => id));
      forth.push(...page.batches.map(({ id }) => id));
      const last = page.batches.at(-1);
      // As an address carries it.
      from = { after: last && readRowPlace(writeRowPlace(last)) };
      more = page.more;
    }
    expect(forth.length).toBeGreaterThan(4);
    expect(forth).toEqual(all.batches.map(({ id }) => id));
    expect(all.more).toBe(false);
    const days = all.batches.map(({ inoculatedOn }) => inoculatedOn);
    expect(days).toEqual(days.toSorted().reverse());
    const third = all.batches.find(({ id }) => id === pages[2]?.[0]);
    const back = await readAs(people.coordinator, (context) =>
      readBatchPage(context, filter, 2, { before: third }),
    );
    expect(back.batches.map(({ id }) => id)).toEqual(pages[1]);
    expect(back.more).toBe(true);
  });

  it('shows a member only their own site, and a funder or another network nothing', async () => {
    const sites = async (actor: Actor) =>
      (await readAs(actor, (context) => readBatchRows(context, year))).map(({ siteId }) => siteId);
    expect(new Set(await sites(people.coordinator))).toEqual(new Set([people.millLane, people.quarry]));
    expect(new Set(await sites(people.member))).toEqual(new Set([people.millLane]));
    expect(await sites(people.funder)).toEqual([]);
    expect(await sites(people.stranger)).toEqual([]);
  });

  it('reads the runs of all components, and says where a treated one has none', async () => {
    await fill('SOAKED', {}, [stock.bathRun, null]);
    const rows = await readAs(people.coordinator, (context) => readBatchRows(context, year));
    expect(rows.filter(({ runMissing }) => runMissing).map(({ runIds }) => runIds)).toEqual([
      [stock.bathRun],
    ]);
  });
});
