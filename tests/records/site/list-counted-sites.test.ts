import { describe, expect, it } from 'vitest';
import type { Actor } from '@/lib/access/actor';
import { runAs } from '@/lib/access/run-command';
import { readAs } from '@/lib/access/scoped-db';
import { startBatch } from '@/lib/records/batch/start-batch.command';
import { startBatchInput } from '@/lib/records/batch/start-batch.input';
import { listCountedSites } from '@/lib/records/site/list-counted-sites.query';
import { voidRecord } from '@/lib/records/void/void-record.command';
import { voidRecordInput } from '@/lib/records/void/void-record.input';
import { testDatabase } from '../../support/database';
import { growers } from '../../support/growers';
import { shed, twentyBags } from '../../support/shed';

const { superuser } = await testDatabase();
const later = new Date('2027-01-20T15:00:00Z');
let tags = 0;

/** Batches of Mill Lane in two years, and none at Quarry Farm. */
async function start() {
  tags += 1;
  const people = await growers(superuser, String(tags));
  const stock = await shed(people);
  const ids: string[] = [];
  for (const inoculatedOn of ['2026-03-31', '2026-05-10', '2027-01-04']) {
    const raw = { ...twentyBags(people, stock), inoculatedOn };
    const started = await runAs(people.member, startBatchInput, startBatch, raw, { now: later });
    if (started.kind !== 'ok') throw new Error(JSON.stringify(started));
    ids.push(started.value.id);
  }
  return { people, ids };
}

async function counted(actor: Actor): Promise<Record<string, number>> {
  const sites = await readAs(actor, listCountedSites);
  return Object.fromEntries(sites.map(({ code, batchCount }) => [code, batchCount]));
}

const enteredTwice = (actor: Actor, id: string) =>
  runAs(
    actor,
    voidRecordInput,
    voidRecord,
    { kind: 'batch', id, revision: 1, reason: 'entered twice' },
    { now: later },
  );

describe('the list of sites', () => {
  it('tells of each site how many batches of all years it has, and none where there is none', async () => {
    const { people } = await start();
    expect(await counted(people.coordinator)).toEqual({ MILL: 3, QUARRY: 0 });
  }, 120_000);

  it('no longer counts a voided batch, be it the last', async () => {
    const { people, ids } = await start();
    for (const [at, id] of ids.entries()) {
      expect((await enteredTwice(people.coordinator, id)).kind).toBe('ok');
      expect(await counted(people.coordinator)).toEqual({ MILL: 2 - at, QUARRY: 0 });
    }
  }, 120_000);

  it("tells a member of the own sites alone, another network's coordinator of neither", async () => {
    const { people } = await start();
    expect(await counted(people.member)).toEqual({ MILL: 3 });
    expect(await counted(people.neighbour)).toEqual({ QUARRY: 0 });
    expect(await counted(people.stranger)).toEqual({ SHEDS: 0 });
  }, 120_000);
});
