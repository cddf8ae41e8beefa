import { Client } from 'pg';
import { expect, it, vi } from 'vitest';
import { testDatabase } from '../../support/database';
import { growers } from '../../support/growers';
import { shed } from '../../support/shed';
import { bring } from './bring';

vi.setConfig({ testTimeout: 120_000 });
const { superuser } = await testDatabase();
const now = new Date('2026-07-20T15:00:00Z');

async function connected<T>(work: (client: Client) => Promise<T>): Promise<T> {
  const client = new Client({ connectionString: superuser });
  await client.connect();
  try {
    return await work(client);
  } finally {
    await client.end();
  }
}

it('a table that grows while rows are added is counted anew, so that no plan made for a small one is kept', async () => {
  const people = await growers(superuser, '2');
  await shed(people);
  const lots = Array.from({ length: 1_500 }, (_, index) => `L-${index},Wheat straw,2026-05-01`);
  const table = ['Lot,Material,Received on', ...lots].join('\n');
  const file = await bring(people.coordinator, { kind: 'substrate_lots', now }, table);
  await connected(async (client) => {
    await client.query('alter table public.substrate_lot set (autovacuum_enabled = off)');
    await client.query('analyze public.substrate_lot');
    await file.check();
    await client.query('vacuum analyze public.substrate_lot');
    expect((await file.add()).counts).toMatchObject({ added: 1_500 });
    const { rows } = await client.query<{ rows: number }>(
      `select reltuples::int as rows from pg_class where oid = 'public.substrate_lot'::regclass`,
    );
    expect(rows[0]?.rows).toBeGreaterThan(400);
  });
});

it('a table that was cleaned up after a check does not count as empty while its rows are added', async () => {
  const people = await growers(superuser);
  await shed(people);
  const names = ['Batch', 'Species', 'Container', 'Bags', 'Date', 'Substrate', 'Treatment'];
  const row = (index: number) => [
    `B-${index}`,
    'Pleurotus ostreatus',
    'bag',
    '9',
    '2026-05-01',
    'STRAW-1',
    'steam',
  ];
  const rows = [names, ...Array.from({ length: 60 }, (_, index) => row(index))];
  const asked = { kind: 'batches', siteId: people.millLane, now } as const;
  const file = await bring(people.member, asked, rows.map((cells) => cells.join(',')).join('\n'));
  expect((await file.check()).counts).toMatchObject({ new: 60, needs: 0 });
  await connected(async (client) => {
    const counted = async () =>
      (
        await client.query<{ rows: number; pages: number }>(
          `select reltuples::int as rows, relpages as pages from pg_class where oid = 'public.batch'::regclass`,
        )
      ).rows[0];
    await client.query('vacuum (truncate false) public.batch');
    // The check left its pages and no rows: the planner takes a lookup by any index of them for free.
    const cleaned = await counted();
    expect(cleaned?.rows).toBe(0);
    expect(cleaned?.pages).toBeGreaterThan(0);
    expect((await file.add()).counts).toMatchObject({ added: 60 });
    expect((await counted())?.rows).toBe(60);
  });
});
