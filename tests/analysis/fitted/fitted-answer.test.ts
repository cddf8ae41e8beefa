import { describe, expect, it } from 'vitest';
import { readAs } from '@/lib/access/scoped-db';
import { inFitTurn } from '@/lib/analysis/fitted/fit-turn';
import { type FittedQuestion, fittedAnswer } from '@/lib/analysis/fitted/fitted-answer';
import { storeResult } from '@/lib/analysis/fitted/stored-result';
import { fewestRowsForStart } from '@/lib/analysis/fitting/warm-fit';
import { simulatedBatches, termsOf } from '../../stats/mixed/simulated-batches';
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

  it('is taken over from another process that has stored it meanwhile', async () => {
    const { state, ask } = question('elsewhere');
    let leave = () => {};
    let taken = () => {};
    const held = new Promise<void>((resolve) => {
      taken = resolve;
    });
    // As another process does: it has the turn, fits, and stores.
    const elsewhere = inFitTurn(coordinator, async () => {
      taken();
      await new Promise<void>((resolve) => {
        leave = resolve;
      });
      await readAs(coordinator, (context) =>
        storeResult(
          context,
          { question: 'doubled', asked: 'elsewhere', siteId: null },
          { result: 77, dataVersion: 'v1', fittedAt: new Date().toISOString() },
        ),
      );
    });
    await held;
    const answer = await ask();
    if (answer.kind === 'current') throw new Error('nothing was to be known yet');
    expect(state.works).toBe(0);
    leave();
    await elsewhere;
    expect((await answer.next).result).toBe(77);
    expect(state.works).toBe(0);
  });

  it('starts its models where those of its last answer ended', async () => {
    const batches = simulatedBatches(5, fewestRowsForStart);
    let version = 1;
    const ask = () =>
      fittedAnswer<null, number>(coordinator, `v${version}`, {
        name: 'spread',
        asked: '',
        read: async () => ({ data: null, version: `v${version}` }),
        work: async (_, fitModel) => {
          const answer = await fitModel({
            kind: 'linear',
            input: { response: batches.map(({ be }) => be), ...termsOf(batches) },
          });
          return answer.kind === 'answer' ? answer.fit.evaluations : Number.NaN;
        },
      });
    const first = await ask();
    if (first.kind !== 'first') throw new Error(first.kind);
    const cold = (await first.next).result;
    version = 2;
    const second = await ask();
    if (second.kind !== 'earlier') throw new Error(second.kind);
    expect((await second.next).result).toBeLessThan(cold);
  });

  it('starts them where those of another question ended, where it has none of its own and is told which', async () => {
    const batches = simulatedBatches(6, fewestRowsForStart);
    const ask = async (name: string, warmFrom?: { name: string; asked: string }) => {
      const answer = await fittedAnswer<null, number>(coordinator, 'v1', {
        name,
        asked: '',
        read: async () => ({ data: null, version: 'v1' }),
        work: async (_, fitModel) => {
          const fitted = await fitModel({
            kind: 'linear',
            input: { response: batches.map(({ be }) => be), ...termsOf(batches) },
          });
          return fitted.kind === 'answer' ? fitted.fit.evaluations : Number.NaN;
        },
        ...(warmFrom ? { warmFrom } : {}),
      });
      return answer.kind === 'first' ? (await answer.next).result : Number.NaN;
    };
    const cold = await ask('usual');
    expect(await ask('own choice', { name: 'nobody asked', asked: '' })).toBe(cold);
    expect(await ask('own choice after', { name: 'usual', asked: '' })).toBeLessThan(cold);
  });

  it('is kept without what stands in its parts', async () => {
    type Parted = { readonly sum: number; readonly sites: readonly string[] };
    const ask = () =>
      fittedAnswer<null, Parted>(coordinator, 'v1', {
        name: 'parted',
        asked: '',
        read: async () => ({ data: null, version: 'v1' }),
        work: async () => ({ sum: 2, sites: ['much', 'more'] }),
        kept: ({ sum }) => ({ sum, sites: [] }),
      });
    const first = await ask();
    if (first.kind !== 'first') throw new Error(first.kind);
    expect((await first.next).result).toEqual({ sum: 2, sites: [] });
    expect(await ask()).toMatchObject({ kind: 'current', stored: { result: { sum: 2, sites: [] } } });
  });
});
