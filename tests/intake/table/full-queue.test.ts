import { beforeAll, describe, expect, it, vi } from 'vitest';
import { writeAs } from '@/lib/access/scoped-db';
import { ok } from '@/lib/base/result';
import { mostAtWork } from '@/lib/intake/table/claim-file';
import { silentMilliseconds } from '@/lib/intake/table/running';
import { startJob } from '@/lib/intake/table/start-job';
import { testDatabase } from '../../support/database';
import { type Growers, growers } from '../../support/growers';
import { shed } from '../../support/shed';
import { bring } from './bring';

vi.setConfig({ testTimeout: 120_000 });
const { superuser } = await testDatabase();
const now = new Date('2026-07-20T15:00:00Z');
let people: Growers;

beforeAll(async () => {
  people = await growers(superuser);
  await shed(people);
});

/** Marks tables as worked on, with the last sign of life so long ago. */
const working = (ids: readonly string[], silentFor: number) =>
  writeAs(people.coordinator, {}, async ({ db }) => {
    const heartbeatAt = new Date(Date.now() - silentFor);
    await db.intakeFile.updateMany({
      where: { id: { in: [...ids] } },
      data: { state: 'checking', heartbeatAt },
    });
    return ok(null);
  });

describe('where as many tables of a network as may are worked on or wait', () => {
  it('another one is kept and told, whoever brought the others, until one of them is done', async () => {
    const sites = 'Code,Name\nELM,Elm Court\n';
    const ids: string[] = [];
    for (let count = 0; count < mostAtWork; count += 1)
      ids.push((await bring(people.coordinator, { kind: 'sites', now }, sites)).id);
    const lots = 'Lot,Material,Received on\nL-1,Wheat straw,2026-05-01\n';
    const own = await bring(people.member, { kind: 'substrate_lots', now }, lots);
    await working(ids, 0);
    expect(await startJob(people.member, own.id, 'check', now)).toMatchObject({
      kind: 'invalid',
      errors: [{ code: 'intake-queue-full' }],
    });
    expect(await own.look()).toMatchObject({ state: 'uploaded', trouble: 'full', counts: { unread: 1 } });
    // In another network nobody waits for these.
    const elsewhere = await bring(people.stranger, { kind: 'sites', now }, sites);
    expect((await elsewhere.check()).state).toBe('checked');
    // A job whose process ended takes nobody's place.
    await working(ids.slice(0, 1), silentMilliseconds * 2);
    expect(await own.check()).toMatchObject({ state: 'checked', trouble: null, counts: { new: 1 } });
  });
});
