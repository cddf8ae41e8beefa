import { randomUUID } from 'node:crypto';
import { Client } from 'pg';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readAs } from '@/lib/access/scoped-db';
import type { BatchFacts } from '@/lib/analysis/comparison/batch-facts';
import { readBatchRows } from '@/lib/analysis/comparison/read-batch-rows';
import { testDatabase } from '../../support/database';
import { type Growers, growers } from '../../support/growers';
import { type Shed, shed } from '../../support/shed';
import { plainBatchRows } from './plain-batch-rows';
import { moreRuns, randomWrites } from './random-writes';

const { superuser } = await testDatabase();
const admin = new Client({ connectionString: superuser });
let people: Growers;
let stock: Shed;
const always = { from: '2000-01-01', to: '2100-01-01' };

beforeAll(async () => {
  await admin.connect();
  people = await growers(superuser);
  stock = await shed(people);
  await moreRuns(admin, people, stock);
}, 60_000);
afterAll(() => admin.end());

async function wrong(): Promise<unknown[]> {
  const { rows } = await admin.query(
    `select * from app.wrong_outcomes($1) union all select * from app.wrong_totals($1)
     union all select * from app.wrong_site_versions($1)`,
    [people.coordinator.networkId],
  );
  return rows;
}

const sorted = (rows: readonly BatchFacts[]) => rows.toSorted((a, b) => a.id.localeCompare(b.id));

describe('what is kept of batches', () => {
  it('is what the records give after any writes, corrections, voids and moves', async () => {
    for (const seed of [1, 2, 3]) {
      const write = randomWrites(admin, people, stock, seed);
      for (let step = 1; step <= 120; step += 1) {
        await write();
        if (step % 20 === 0) expect(await wrong()).toEqual([]);
      }
    }
    const { rows } = await admin.query(
      `select (select count(*) from outcome_due)::int as due, (select count(*) from batch_outcome where apart)::int as apart`,
    );
    expect(rows[0].due).toBe(0);
    expect(rows[0].apart).toBeGreaterThan(5);
  }, 120_000);

  it('tells of each batch what adding up its records tells', async () => {
    const kept = await readAs(people.coordinator, (context) => readBatchRows(context, always));
    const plain = await readAs(people.coordinator, (context) => plainBatchRows(context, always));
    expect(kept.length).toBeGreaterThan(50);
    const once = (facts: BatchFacts) => ({ ...facts, runIds: [...new Set(facts.runIds)].sort() });
    expect(sorted(kept)).toEqual(sorted(plain).map(once));
  });

  it('is rebuilt as it was kept', async () => {
    const rowsOf = async (table: string) =>
      (await admin.query(`select to_jsonb(t) as row from ${table} t order by t::text`)).rows;
    const state = () =>
      Promise.all(['outcome_summary', 'outcome_site_total', 'outcome_network_total'].map(rowsOf));
    const before = await state();
    await admin.query('select app.rebuild_outcomes($1)', [people.coordinator.networkId]);
    expect(await state()).toEqual(before);
    expect(await wrong()).toEqual([]);
  });

  it('is right whoever of several writers comes first', async () => {
    const clients = await Promise.all(
      Array.from({ length: 6 }, async () => {
        const client = new Client({ connectionString: superuser });
        await client.connect();
        return client;
      }),
    );
    await Promise.all(
      clients.map(async (client, index) => {
        const write = randomWrites(client, people, stock, 100 + index);
        for (let step = 0; step < 30; step += 1) await write();
      }),
    );
    await Promise.all(clients.map((client) => client.end()));
    expect(await wrong()).toEqual([]);
  }, 120_000);

  it('is seen to be wrong when a row is changed behind its back', async () => {
    await admin.query('begin');
    await admin.query(
      `update outcome_summary set units = units + 1 where span = 'year' and measure = 'yield' and class = 'counted'
         and site_id = (select site_id from outcome_summary where span = 'year' and measure = 'yield' and class = 'counted' limit 1)`,
    );
    await admin.query(`update batch_outcome set apart = not apart where batch_id = (
      select batch_id from batch_outcome where cardinality(run_ids) = 1 limit 1)`);
    const whats = (await wrong()).map((row) => (row as { what: string }).what);
    await admin.query('rollback');
    expect(new Set(whats)).toEqual(new Set(['cluster', 'quarter', 'year', 'site total', 'network total']));
  });

  it('is seen to be wrong when only a total is', async () => {
    await admin.query('begin');
    await admin.query(
      `update outcome_site_total set fresh = fresh + 1 where span = 'quarter' and yield_batches > 0`,
    );
    await admin.query(`update outcome_network_total set runs = runs + 1 where span = 'year'`);
    const whats = (await wrong()).map((row) => (row as { what: string }).what);
    await admin.query('rollback');
    expect(new Set(whats)).toEqual(new Set(['site total', 'network total']));
  });

  it('is seen to be wrong when a site has no version, or one ahead of its network', async () => {
    for (const change of [
      'delete from outcome_site_version where site_id = (select site_id from batch_outcome limit 1)',
      'update outcome_site_version set version = version + 1000000',
    ]) {
      await admin.query('begin');
      await admin.query(change);
      const whats = (await wrong()).map((row) => (row as { what: string }).what);
      await admin.query('rollback');
      expect(new Set(whats)).toEqual(new Set(['site version']));
    }
  });

  it('cannot be written by the application', async () => {
    await expect(
      readAs(people.coordinator, ({ db }) =>
        db.outcomeSummary.deleteMany({ where: { siteId: randomUUID() } }),
      ),
    ).rejects.toThrow(/permission denied/);
  });
});
