import { describe, expect, it } from 'vitest';
import { type FittedQuestion, fittedAnswer } from '@/lib/analysis/fitted/fitted-answer';
import { testDatabase } from '../../support/database';
import { growers } from '../../support/growers';

const { superuser } = await testDatabase();
const { coordinator } = await growers(superuser);

/** A question about a number that stands for the records; `works` counts how often it was worked out. */
function question(asked: string) {
  const state = { records: 1, works: 0, release: () => {} };
  const asks: FittedQuestion<number, number> = {
    name: 'doubled',
    asked,
    read: async () => ({ data: state.records, version: `v${state.records}` }),
    work: async (data) => {
      state.works += 1;
      await new Promise<void>((resolve) => {
        state.release = resolve;
      });
      return 2 * data;
    },
  };
  const ask = () => fittedAnswer(coordinator, `v${state.records}`, asks);
  return { state, ask };
}

describe('an answer that takes long', () => {
  it('is worked out once however many ask, and kept while the records stay as they are', async () => {
    const { state, ask } = question('once');
    const both = await Promise.all([ask(), ask()]);
    const nexts = both.map((answer) => (answer.kind === 'current' ? undefined : answer.next));
    expect(both.map(({ kind }) => kind)).toEqual(['first', 'first']);
    await expect.poll(() => state.works).toBe(1);
    state.release();
    expect((await Promise.all(nexts)).map((stored) => stored?.result)).toEqual([2, 2]);
    const later = await ask();
    expect(later).toMatchObject({ kind: 'current', stored: { result: 2, dataVersion: 'v1' } });
    expect(state.works).toBe(1);
  });

  it('is shown as it was, with its date, while changed records are worked out: many changes, one fit', async () => {
    const { state, ask } = question('changes');
    const first = await ask();
    await expect.poll(() => state.works).toBe(1);
    // Two changes while the first fit is under way.
    state.records = 2;
    const joined = await ask();
    state.records = 3;
    await ask();
    expect(state.works).toBe(1);
    state.release();
    if (first.kind === 'current' || joined.kind === 'current') throw new Error('nothing was to be known yet');
    expect((await first.next).result).toBe(2);
    expect((await joined.next).dataVersion).toBe('v1');
    const earlier = await ask();
    expect(earlier).toMatchObject({ kind: 'earlier', stored: { result: 2, dataVersion: 'v1' } });
    if (earlier.kind !== 'earlier') throw new Error('the records had changed');
    expect(Date.parse(earlier.stored.fittedAt)).toBeGreaterThan(0);
    await expect.poll(() => state.works).toBe(2);
    state.release();
    expect(await earlier.next).toMatchObject({ result: 6, dataVersion: 'v3' });
    expect(await ask()).toMatchObject({ kind: 'current', stored: { result: 6 } });
    expect(state.works).toBe(2);
  });
});
