import { randomUUID } from 'node:crypto';
import { Client } from 'pg';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readAs } from '@/lib/access/scoped-db';
import type { ComparedRow } from '@/lib/analysis/comparison/compare';
import { readComparisonPage } from '@/lib/analysis/comparison/read-comparison-page';
import { readRowsBehind } from '@/lib/analysis/comparison/read-rows-behind';
import { forgetBeside } from '@/lib/analysis/outcomes/remembered-beside';
import { forgetYears } from '@/lib/analysis/outcomes/remembered-years';
import { testDatabase } from '../../support/database';
import { type Growers, growers } from '../../support/growers';
import { type Shed, shed } from '../../support/shed';
import { plainComparison } from './plain-comparison';
import { moreRuns, moreSites, randomWrites } from './random-writes';

const { superuser } = await testDatabase();
const admin = new Client({ connectionString: superuser });
let people: Growers;
let stock: Shed;
let sites: readonly string[];
const now = new Date('2026-02-10T15:00:00Z');

beforeAll(async () => {
  await admin.connect();
  people = await growers(superuser);
  stock = await shed(people);
  await moreRuns(admin, people, stock);
  sites = await moreSites(admin, people);
  const write = randomWrites(admin, people, stock, 31, sites);
  for (let step = 0; step < 200; step += 1) await write();
}, 120_000);
afterAll(() => admin.end());

const sorted = (rows: readonly ComparedRow[]) =>
  rows.toSorted((a, b) => `${a.method} ${a.site}`.localeCompare(`${b.method} ${b.site}`));

const pageOf = (query: Record<string, string>, at = now) =>
  readAs(people.coordinator, (context) => readComparisonPage(context, query, at));

async function expectPlain(query: Record<string, string>, at = now) {
  const plain = await readAs(people.coordinator, (context) => plainComparison(context, query, at));
  const page = await pageOf(query, at);
  if (!plain || !page) throw new Error('nothing to compare');
  const { comparison } = page;
  expect(comparison.total).toEqual(plain.total);
  expect(sorted(comparison.methods)).toEqual(sorted(plain.methods));
  expect(sorted(comparison.sites)).toEqual(sorted(plain.sites));
  expect(sorted(comparison.cells)).toEqual(sorted(plain.cells));
  const rows = await readAs(people.coordinator, (context) => readRowsBehind(context, query, at));
  expect(rows?.figures).toEqual(plain.total);
}

const always = { from: '2025-01-01', to: '2027-12-31', container: 'bag', species: 'all' };
const twoSites = `select site_id from batch_outcome where container = 'bag' and last_inspected_on >= contamination_assessed_on and not voided
  group by site_id order by site_id limit 2`;

async function oneUnitMoreAt(site: string | undefined) {
  const { rowCount } = await admin.query(
    `update batch b set unit_count = b.unit_count + 1 where (b.network_id, b.id) in (
       select network_id, batch_id from batch_outcome
       where container = 'bag' and site_id = $1 and contamination_class = 'counted'
         and last_inspected_on >= contamination_assessed_on order by inoculated_on, batch_id limit 1)`,
    [site],
  );
  expect(rowCount).toBe(1);
}

/** Behind the back of what tells of writes: nothing that the application can do. */
const lostMoreAt = (site: string | undefined, by: number) =>
  admin.query(`update outcome_site_total set lost_clean = lost_clean + $1 where site_id = $2`, [by, site]);

/** Tells of a write without one, which would work the site's sums out anew. */
const tellAWriteAt = (site: string | undefined) =>
  admin.query(
    `with moved as (update outcome_version set version = version + 1 returning network_id, version)
     update outcome_site_version s set version = moved.version from moved
     where s.network_id = moved.network_id and s.site_id = $1`,
    [site],
  );

describe('sums that are remembered by site', () => {
  it('are those of the batches after any writes, corrections, voids, moves and days', async () => {
    const questions = [
      always,
      { from: '2025-12-03', to: '2026-02-11', container: 'bag', species: 'all' },
      { from: '2025-01-01', to: '2027-12-31', container: 'bag', species: stock.oyster },
      { from: '2025-01-01', to: '2027-12-31', container: 'log', species: 'all' },
    ];
    const write = randomWrites(admin, people, stock, 32, sites);
    for (let step = 1; step <= 120; step += 1) {
      await write();
      if (step % 4 !== 0) continue;
      const question = questions[(step / 4) % questions.length] ?? always;
      await expectPlain(question);
      await expectPlain({ ...question, method: stock.hotWater });
      if (step % 40 === 0) await expectPlain(question, new Date('2026-03-20T15:00:00Z'));
    }
  }, 120_000);

  it('tell of the moment at which they are asked, also where nothing was written since', async () => {
    await expectPlain(always);
    await expectPlain(always, new Date('2026-02-10T15:20:00Z'));
  });

  it('hold what lies before the days that were asked about first, also where a site was written since', async () => {
    const later = { ...always, from: '2026-01-01' };
    forgetBeside();
    await expectPlain({ ...later, to: '2027-12-30' });
    await expectPlain({ ...always, to: '2027-12-30' });
    const [own] = (await admin.query<{ site_id: string }>(twoSites)).rows;
    forgetBeside();
    await expectPlain({ ...later, to: '2027-12-29' });
    await oneUnitMoreAt(own?.site_id);
    await expectPlain({ ...always, to: '2027-12-29' });
  });

  it('are of the day asked about, earlier or later than the one before', async () => {
    forgetBeside();
    for (const day of ['2026-03-20', '2026-01-10', '2026-02-05', '2026-07-01'])
      await expectPlain({ ...always, to: '2027-12-28' }, new Date(`${day}T15:00:00Z`));
  });

  it('are read again of the sites that were written, and of no other', async () => {
    const [own, other] = (await admin.query<{ site_id: string }>(twoSites)).rows;
    await expectPlain(always);
    const before = await pageOf(always);
    await lostMoreAt(other?.site_id, 1_000_000);
    await oneUnitMoreAt(own?.site_id);
    const after = await pageOf(always);
    expect(after?.comparison.total.lostOtherUnits).toBe(before?.comparison.total.lostOtherUnits);
    expect(after?.comparison.total).not.toEqual(before?.comparison.total);
    await tellAWriteAt(other?.site_id);
    expect((await pageOf(always))?.comparison.total.lostOtherUnits).toBeGreaterThan(999_999);
    await lostMoreAt(other?.site_id, -1_000_000);
    await tellAWriteAt(other?.site_id);
    await expectPlain(always);
  });

  it('are shared by questions that take in the same whole years, until a site is written', async () => {
    const [own, other] = (await admin.query<{ site_id: string }>(twoSites)).rows;
    const lost = async (query: Record<string, string>) =>
      (await pageOf(query))?.comparison.total.lostOtherUnits;
    forgetYears();
    const before = (await lost({ ...always, to: '2027-12-27' })) ?? 0;
    await lostMoreAt(other?.site_id, 1_000_000);
    expect(await lost({ ...always, to: '2027-12-26' })).toBe(before);
    await oneUnitMoreAt(own?.site_id);
    expect(await lost({ ...always, to: '2027-12-25' })).toBe(before);
    // Materials are not told apart in them, and one is added up from sums of its own.
    const material = await admin.query<{ key: string }>(
      `select material_key as key from outcome_summary where length(material_key) = 36 order by 1 limit 1`,
    );
    await expectPlain({ ...always, to: '2027-12-24', material: material.rows[0]?.key ?? '' });
    await tellAWriteAt(other?.site_id);
    expect(await lost({ ...always, to: '2027-12-23' })).toBeGreaterThan(999_999);
    await lostMoreAt(other?.site_id, -1_000_000);
    await tellAWriteAt(other?.site_id);
    for (const species of ['all', stock.oyster]) {
      await expectPlain({ ...always, to: '2027-12-22', species });
      await expectPlain({ ...always, from: '2025-11-05', to: '2027-12-22', species });
    }
  });

  it('are read again everywhere when a batch joins two runs of another site', async () => {
    const network = people.coordinator.networkId;
    const runs: string[] = [];
    for (const code of ['JOIN-1', 'JOIN-2']) {
      const { rows } = await admin.query<{ id: string }>(
        `insert into treatment_run (network_id, code, site_id, method_id, started_at) values ($1, $2, $3, $4, '2026-01-01') returning id`,
        [network, code, people.quarry, stock.hotWater],
      );
      runs.push(rows[0]?.id ?? '');
    }
    const treated = async (batch: string, site: string, run: string | undefined) =>
      admin.query(
        `insert into batch_component (network_id, batch_id, site_id, substrate_lot_id, method_id, treatment_run_id, role, mass_stage)
         values ($1, $2, $3, $4, $5, $6, 'substrate', 'filled')`,
        [network, batch, site, stock.straw, stock.hotWater, run],
      );
    const bagAt = async (site: string) => {
      const id = randomUUID();
      await admin.query(
        `insert into batch (network_id, id, code, site_id, species_id, container_kind, unit_count, inoculated_on, method_id, mixed_method,
           second_life, moisture_source, dry_mass_from, dry_assumed, contamination_assessed_on)
         values ($1, $2::uuid, $2::text, $3, $4, 'bag', 5, '2025-12-01', $5, false, false, 'none', 'none', false, '2026-01-01')`,
        [network, id, site, stock.oyster, stock.hotWater],
      );
      await admin.query(
        `insert into look (network_id, batch_id, site_id, looked_on) values ($1, $2, $3, '2026-01-05')`,
        [network, id, site],
      );
      return id;
    };
    // Each run at both sites: what joins them changes nothing that is kept of the batches at the other site.
    for (const site of [people.quarry, people.millLane])
      for (const run of runs) await treated(await bagAt(site), site, run);
    const joining = await bagAt(people.millLane);
    await treated(joining, people.millLane, runs[0]);
    const runsAtQuarry = async () => {
      const page = await pageOf(always);
      return page?.comparison.sites.find(({ site }) => site === people.quarry)?.contamination.n.runs;
    };
    await expectPlain(always);
    const before = (await runsAtQuarry()) ?? 0;
    await treated(joining, people.millLane, runs[1]);
    expect(await runsAtQuarry()).toBe(before - 1);
    await expectPlain(always);
  });

  it('are forgotten when the database is one of an earlier day', async () => {
    await expectPlain(always);
    const [own] = (await admin.query<{ site_id: string }>(twoSites)).rows;
    await oneUnitMoreAt(own?.site_id);
    await admin.query(`update outcome_site_version set version = 1`);
    await admin.query(`update outcome_version set version = 1`);
    await expectPlain(always);
  });
});
