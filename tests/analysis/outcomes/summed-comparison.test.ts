import { Client } from 'pg';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readAs } from '@/lib/access/scoped-db';
import type { ComparedRow } from '@/lib/analysis/comparison/compare';
import { readComparison } from '@/lib/analysis/comparison/read-comparison';
import { readComparisonPage } from '@/lib/analysis/comparison/read-comparison-page';
import { splitPeriod } from '@/lib/analysis/outcomes/split-period';
import { testDatabase } from '../../support/database';
import { type Growers, growers } from '../../support/growers';
import { type Shed, shed } from '../../support/shed';
import { moreRuns, moreSites, randomWrites } from './random-writes';

const { superuser } = await testDatabase();
const admin = new Client({ connectionString: superuser });
let people: Growers;
let stock: Shed;

beforeAll(async () => {
  await admin.connect();
  people = await growers(superuser);
  stock = await shed(people);
  await moreRuns(admin, people, stock);
  const sites = await moreSites(admin, people);
  for (const seed of [11, 12, 13]) {
    const write = randomWrites(admin, people, stock, seed, sites);
    for (let step = 0; step < 150; step += 1) await write();
  }
}, 120_000);
afterAll(() => admin.end());

const sorted = (rows: readonly ComparedRow[]) =>
  rows.toSorted((a, b) => `${a.method} ${a.site}`.localeCompare(`${b.method} ${b.site}`));

async function bothWays(query: Record<string, string>, now: Date) {
  const one = await readAs(people.coordinator, (context) => readComparison(context, query, now));
  const other = await readAs(people.coordinator, (context) => readComparisonPage(context, query, now));
  if (!one || !other) throw new Error('nothing to compare');
  const rowsOf = ({ comparison: { total, methods, sites, cells } }: typeof one) => ({
    ...{ total, methods: sorted(methods), sites: sorted(sites), cells: sorted(cells) },
  });
  return [rowsOf(other), rowsOf(one)];
}

describe('a comparison from kept sums', () => {
  it('is the one added up batch by batch, in any period, of any choice, on any day', async () => {
    const periods = [
      ['2025-01-01', '2027-12-31'],
      ['2025-12-03', '2026-02-11'],
      ['2026-01-01', '2026-03-31'],
      ['2025-11-30', '2026-01-01'],
      ['2026-02-02', '2026-02-02'],
    ];
    const choices = [
      { container: 'bag', species: stock.oyster },
      { container: 'bag', species: 'all' },
      { container: 'bag', species: 'all', method: stock.hotWater },
      { container: 'bag', species: 'all', site: people.quarry },
      { container: 'bed', species: 'all' },
      { container: 'log', species: 'all' },
    ];
    let counted = 0;
    const kinds = new Set<string>();
    for (const day of ['2026-01-20', '2026-02-25', '2026-04-10', '2027-06-01'])
      for (const [from, to] of periods)
        for (const choice of choices) {
          const query = { from: from as string, to: to as string, ...choice } as Record<string, string>;
          const [summed, added] = await bothWays(query, new Date(`${day}T15:00:00Z`));
          expect(summed).toEqual(added);
          kinds.add(summed?.total.contamination.kind ?? '').add(summed?.total.yield.kind ?? '');
          counted += summed?.total.contamination.n.runs ?? 0;
        }
    // What is written hangs on ids that are new each time: usually some 200 to 300 runs.
    expect(counted).toBeGreaterThan(80);
    expect(kinds).toEqual(new Set(['figure', 'counts', 'cannot']));
  }, 120_000);

  it('lets batches enter while only the clock moves', async () => {
    const query = { from: '2025-01-01', to: '2027-12-31', container: 'bag', species: 'all' };
    const kept = async () =>
      (
        await admin.query(`select (select count(*) from history) as lines,
        (select md5(string_agg(s::text, '' order by s::text)) from outcome_summary s) as sums,
        (select md5(string_agg(b::text, '' order by b::text)) from batch_outcome b) as batches`)
      ).rows;
    const before = await kept();
    const at = async (day: string) => (await bothWays(query, new Date(`${day}T15:00:00Z`)))[0]?.total;
    const early = await at('2025-12-20');
    const late = await at('2026-12-20');
    expect(early?.contamination.n.batches ?? 0).toBeLessThan(late?.contamination.n.batches ?? 0);
    expect(early?.contamination.leftOut.map(({ reason }) => reason)).toContain('window-open');
    expect(late?.contamination.leftOut.map(({ reason }) => reason)).not.toContain('window-open');
    expect(await kept()).toEqual(before);
  });
});

describe('a period', () => {
  it('is split into whole years, whole quarters and the days at its ends', () => {
    const held = { from: '2019-03-05', to: '2026-11-20' };
    expect(splitPeriod({ from: '2020-12-30', to: '2023-05-02' }, held)).toEqual({
      years: ['2021-01-01', '2022-01-01'],
      quarters: ['2023-01-01'],
      days: [
        ['2020-12-30', '2020-12-31'],
        ['2023-04-01', '2023-05-02'],
      ],
    });
  });

  it('that reaches beyond all there is goes by whole years', () => {
    const held = { from: '2025-03-05', to: '2026-11-20' };
    expect(splitPeriod({ from: '2000-02-02', to: '2026-11-20' }, held)).toEqual({
      years: ['2025-01-01', '2026-01-01'],
      quarters: [],
      days: [],
    });
  });
});
