import { beforeAll, describe, expect, it, vi } from 'vitest';
import type { Actor } from '@/lib/access/actor';
import { ok } from '@/lib/base/result';
import { startJob, stopJob } from '@/lib/intake/table/start-job';
import { inTurn } from '@/lib/intake/table/take-turns';
import { testDatabase } from '../../support/database';
import { type Growers, growers } from '../../support/growers';
import { bring } from './bring';

vi.setConfig({ testTimeout: 120_000 });
const { superuser } = await testDatabase();
const now = new Date('2026-07-20T15:00:00Z');
let people: Growers;
let others: Growers;

beforeAll(async () => {
  people = await growers(superuser);
  others = await growers(superuser, '2');
});

const options = { longestMilliseconds: 60_000 };

/** Work that goes on until it is let go. */
function held(actor: Actor) {
  let letGo = () => {};
  const gate = new Promise<void>((resolve) => {
    letGo = resolve;
  });
  let began = false;
  let tries = 0;
  const finished = inTurn(
    actor,
    options,
    async () => {
      began = true;
      await gate;
      return ok(null);
    },
    async () => {
      tries += 1;
    },
  );
  return { finished, letGo: () => letGo(), began: () => began, tries: () => tries };
}

const table = 'Code,Name\nELM,Elm Court\nBARN,The Barn\n';

describe('work on tables', () => {
  it('is done one after the other in a network', async () => {
    const first = held(people.coordinator);
    await vi.waitFor(() => expect(first.began()).toBe(true));
    const second = held(people.member);
    await vi.waitFor(() => expect(second.tries()).toBeGreaterThan(2), 10_000);
    expect(second.began()).toBe(false);
    first.letGo();
    await first.finished;
    await vi.waitFor(() => expect(second.began()).toBe(true), 10_000);
    second.letGo();
    await second.finished;
  });

  it('is done on two tables of a process at once, and not on a third', async () => {
    const two = [held(people.coordinator), held(people.stranger)];
    await vi.waitFor(() => expect(two.map(({ began }) => began())).toEqual([true, true]), 10_000);
    const third = held(others.coordinator);
    await vi.waitFor(() => expect(third.tries()).toBeGreaterThan(2), 10_000);
    expect(third.began()).toBe(false);
    two[0]?.letGo();
    await vi.waitFor(() => expect(third.began()).toBe(true), 10_000);
    for (const one of [...two, third]) one.letGo();
    await Promise.all([...two, third].map(({ finished }) => finished));
  });

  it('waits in sight, goes on by itself, and can be stopped while it waits', async () => {
    const first = held(people.coordinator);
    await vi.waitFor(() => expect(first.began()).toBe(true));
    const files = [];
    for (const fileName of ['a.csv', 'b.csv']) {
      const file = await bring(people.coordinator, { kind: 'sites', now, fileName }, table);
      const job = await startJob(people.coordinator, file.id, 'check', now);
      if (job.kind !== 'ok') throw new Error(JSON.stringify(job));
      files.push({ ...file, finished: job.value.finished });
    }
    const [stays, stopped] = files;
    for (const file of files)
      await vi.waitFor(async () => expect((await file.look()).state).toBe('waiting'), 10_000);
    await stopJob(people.coordinator, stopped?.id ?? '');
    await stopped?.finished;
    expect(await stopped?.look()).toMatchObject({ state: 'uploaded', trouble: 'stopped' });
    expect((await stays?.look())?.state).toBe('waiting');
    first.letGo();
    await stays?.finished;
    expect(await stays?.look()).toMatchObject({ state: 'checked', trouble: null, counts: { new: 2 } });
  });
});
