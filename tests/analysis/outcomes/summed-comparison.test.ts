import { Client } from 'pg';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readAs, readSnapshot } from '@/lib/access/scoped-db';
import type { ComparedRow, Comparison } from '@/lib/analysis/comparison/compare';
import { readComparison } from '@/lib/analysis/comparison/read-comparison';
import { readComparisonPage } from '@/lib/analysis/comparison/read-comparison-page';
import { splitPeriod } from '@/lib/analysis/outcomes/split-period';
import { testDatabase } from '../../support/database';
import { type Growers, growers } from '../../support/growers';
import { type Shed, shed } from '../../support/shed';
import { plainComparison } from './plain-comparison';
import { moreRuns, moreSites, randomWrites } from './random-writes';

const { superuser } = await testDatabase();
const admin = new Client({ connectionString: superuser });
let people: Growers;
let stock: Shed;
let straw: string;

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
  const { rows } = await admin.query<{ id: string }>(
    `update batch b set material_id = l.material_id from substrate_lot l
     where l.network_id = b.network_id and l.id = $1 and b.code > '6' returning l.material_id as id`,
    [stock.straw],
  );
  straw = rows[0]?.id ?? '';
}, 120_000);
afterAll(() => admin.end());

const sorted = (rows: readonly ComparedRow[]) =>
  rows.toSorted((a, b) => `${a.method} ${a.site}`.localeCompare(`${b.method} ${b.site}`));

const ordered = ({ total, methods, sites, cells }: Comparison) => ({
  ...{ total, methods: sorted(methods), sites: sorted(sites), cells: sorted(cells) },
});

async function bothWays(query: Record<string, string>, now: Date) {
  const added = await readAs(people.coordinator, (context) => plainComparison(context, query, now));
  const page = await readAs(people.coordinator, (context) => readComparisonPage(context, query, now));
  if (!added || !page) throw new Error('nothing to compare');
  return { added: ordered(added), page: ordered(page.comparison) };
}

async function fileOf(query: Record<string, string>, now: Date) {
  const file = await readSnapshot(people.coordinator, (context) => readComparison(context, query, now));
  return file && ordered(file.comparison);
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
      { container: 'bag', species: 'all', site: people.quarry, method: stock.hotWater },
      { container: 'bag', species: 'all', material: straw },
      { container: 'bed', species: 'all' },
      { container: 'log', species: 'all' },
    ];
    let counted = 0;
    const kinds = new Set<string>();
    for (const day of ['2026-01-20', '2026-02-25', '2026-04-10', '2027-06-01'])
      for (const [from, to] of periods)
        for (const choice of choices) {
          const query = { from: from as string, to: to as string, ...choice } as Record<string, string>;
          const now = new Date(`${day}T15:00:00Z`);
          const { added, page } = await bothWays(query, now);
          expect(page).toEqual(added);
          // The page's sums in other words, and the same rows of sites: once for each period and choice is enough.
          if (day === '2026-02-25') expect(await fileOf(query, now)).toEqual(added);
          kinds.add(page.total.contamination.kind).add(page.total.yield.kind);
          counted += page.total.contamination.n.runs;
        }
    // What is written hangs on ids that are new each time: usually some 200 to 300 runs.
    expect(counted).toBeGreaterThan(80);
    expect(kinds).toEqual(new Set(['figure', 'counts', 'cannot']));
  }, 120_000);

  it('is read anew after a write, and kept until then', async () => {
    const query = { from: '2025-01-01', to: '2027-12-31', container: 'bag', species: 'all' };
    const now = new Date('2027-06-01T15:00:00Z');
    const total = async () => (await bothWays(query, now)).page.total;
    const before = await total();
    // Behind its back: nothing that the application can do.
    await admin.query(`update outcome_site_total set contaminated = contaminated + 1000000`);
    expect(
      (await readAs(people.coordinator, (context) => readComparisonPage(context, query, now)))?.comparison
        .total,
    ).toEqual(before);
    await admin.query(`update outcome_site_total set contaminated = contaminated - 1000000`);
    const { rowCount } = await admin.query(
      `insert into finding (network_id, batch_id, site_id, found_on, units, sign, stage, action)
       select network_id, batch_id, site_id, inoculated_on, 1, 'green', 'colonising', 'discarded' from batch_outcome
       where container = 'bag' and contamination_class = 'counted' and contaminated_at_any_time + lost_clean < unit_count
         and contamination_assessed_on >= inoculated_on limit 1`,
    );
    expect(rowCount).toBe(1);
    const { added, page } = await bothWays(query, now);
    expect(page).toEqual(added);
    expect(page.total).not.toEqual(before);
  });

  it('lets batches enter while only the clock moves', async () => {
    const query = { from: '2025-01-01', to: '2027-12-31', container: 'bag', species: 'all' };
    const kept = async () =>
      (
        await admin.query(`select (select count(*) from history) as lines,
        (select md5(string_agg(s::text, '' order by s::text)) from outcome_summary s) as sums,
        (select md5(string_agg(b::text, '' order by b::text)) from batch_outcome b) as batches`)
      ).rows;
    const before = await kept();
    const at = async (day: string) => (await bothWays(query, new Date(`${day}T15:00:00Z`))).page.total;
    const early = await at('2025-12-20');
    const late = await at('2026-12-20');
    expect(early.contamination.n.batches).toBeLessThan(late.contamination.n.batches);
    expect(early.contamination.leftOut.map(({ reason }) => reason)).toContain('window-open');
    expect(late.contamination.leftOut.map(({ reason }) => reason)).not.toContain('window-open');
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
