import { Client } from 'pg';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Actor } from '@/lib/access/actor';
import { runAs } from '@/lib/access/run-command';
import { readRecordFaults } from '@/lib/analysis/record-question/read-record-faults';
import { closeBatch } from '@/lib/records/batch/close-batch.command';
import { closeBatchInput } from '@/lib/records/batch/close-batch.input';
import { startBags } from '../../support/bags';
import { testDatabase } from '../../support/database';
import { type Growers, growers } from '../../support/growers';
import { type Shed, shed, untreatedStraw } from '../../support/shed';

const { superuser } = await testDatabase();
const now = new Date('2026-07-20T15:00:00Z');
const days = ['2026-04-01', '2026-04-02', '2026-04-02', '2026-04-03', '2026-04-05'];
let people: Growers;
let stock: Shed;

beforeAll(async () => {
  people = await growers(superuser);
  stock = await shed(people);
  for (const inoculatedOn of days) await startBags(people, stock, { inoculatedOn });
}, 120_000);

const asked = (actor: Actor, most: number) => readRecordFaults(actor, now, { most });
/** How many batches nobody looked at the question has found. */
const uninspected = async (actor: Actor, most: number) => {
  const found = await asked(actor, most);
  return found?.faults.filter(({ kind }) => kind === 'not-inspected').length;
};

describe('records that are missing, where there are more batches than can be looked through', () => {
  it('are told of the latest that were begun on whole days, and the period begins with them', async () => {
    expect(await asked(people.coordinator, 5)).toMatchObject({ latestOnly: undefined });
    expect(await uninspected(people.coordinator, 5)).toBe(5);
    // The first day would make them five.
    expect(await asked(people.coordinator, 4)).toMatchObject({
      latestOnly: 4,
      period: { from: '2026-04-02' },
    });
    expect(await uninspected(people.coordinator, 4)).toBe(4);
    // Of the two of one day neither is taken where there is room for one.
    expect(await asked(people.coordinator, 3)).toMatchObject({
      latestOnly: 3,
      period: { from: '2026-04-03' },
    });
    expect(await uninspected(people.coordinator, 3)).toBe(2);
  });

  it('are for a member those of the own sites, however many there are elsewhere', async () => {
    const elsewhere = {
      siteId: people.quarry,
      inoculatedOn: '2026-04-04',
      components: [untreatedStraw(stock)],
    };
    await startBags({ ...people, member: people.neighbour }, stock, elsewhere);
    expect(await asked(people.neighbour, 1)).toMatchObject({ latestOnly: undefined });
    expect(await uninspected(people.neighbour, 1)).toBe(1);
    expect(await asked(people.coordinator, 5)).toMatchObject({ latestOnly: 5 });
    expect(await asked(people.member, 5)).toMatchObject({ latestOnly: undefined });
    expect(await uninspected(people.member, 5)).toBe(5);
  });

  it('are also entries of a later day than the closing, and none of the same day', async () => {
    const batchId = await startBags(people, stock, { inoculatedOn: '2026-04-06' });
    const raw = {
      ...{ batchId, closedOn: '2026-05-01', closeReason: 'finished', spentDestination: 'composted' },
      noHarvest: 'none_picked',
    };
    const closed = await runAs(people.member, closeBatchInput, closeBatch, raw, { now });
    if (closed.kind !== 'ok') throw new Error(JSON.stringify(closed));
    const admin = new Client({ connectionString: superuser });
    await admin.connect();
    try {
      const look = (on: string) =>
        admin.query(
          `insert into look (network_id, site_id, batch_id, looked_on) select network_id, site_id, id, $2 from batch where id = $1`,
          [batchId, on],
        );
      const found = async () =>
        (await asked(people.coordinator, 9))?.faults.flatMap(({ kind, id, on }) =>
          kind === 'entry-after-closing' ? [{ id, on }] : [],
        );
      await look('2026-05-01');
      expect(await found()).toEqual([]);
      await look('2026-05-03');
      await look('2026-05-02');
      expect(await found()).toEqual([{ id: batchId, on: '2026-05-03' }]);
    } finally {
      await admin.end();
    }
  }, 60_000);
});
