import { describe, expect, it } from 'vitest';
import { answerRequest } from '@/lib/analysis/fitting/answer-request';
import type { Fit } from '@/lib/analysis/fitting/fit';
import type { FitRequest } from '@/lib/analysis/fitting/fit-request';
import { fewestRowsForStart, warmFit } from '@/lib/analysis/fitting/warm-fit';
import { simulatedBatches, termsOf } from '../../stats/mixed/simulated-batches';

const batches = simulatedBatches(3, fewestRowsForStart);
const yields: FitRequest = {
  kind: 'linear',
  input: { response: batches.map(({ be }) => be), ...termsOf(batches) },
};
const logs: FitRequest = {
  kind: 'linear',
  input: { response: batches.map(({ be }) => Math.log(Math.max(be, 1))), ...termsOf(batches) },
};
const losses: FitRequest = {
  kind: 'binomial',
  input: {
    events: batches.map(({ contaminated }) => contaminated),
    trials: batches.map(({ units }) => units),
    ...termsOf(batches),
  },
};

/** Fits here and now, and remembers what each fit was given and took. */
function watched() {
  const asked: FitRequest[] = [];
  const evaluations: number[] = [];
  const fitHere: Fit = async (request) => {
    asked.push(request);
    const answer = answerRequest(request);
    if (answer.kind === 'answer') evaluations.push(answer.fit.evaluations);
    return answer;
  };
  return { fitHere, asked, evaluations };
}

describe('fitting again', () => {
  it('starts each model where the same one ended, and takes fewer evaluations to the same answer', async () => {
    const cold = watched();
    const first = warmFit(cold.fitHere, {});
    const before: Awaited<ReturnType<Fit>>[] = [];
    for (const request of [losses, yields, logs]) before.push(await first.fit(request));
    expect(cold.asked.map(({ input }) => input.start)).toEqual([undefined, undefined, undefined]);
    // As it is kept with the answer.
    const kept = JSON.parse(JSON.stringify(first.starts));
    const warm = watched();
    const again = warmFit(warm.fitHere, kept);
    const after: Awaited<ReturnType<Fit>>[] = [];
    for (const request of [losses, yields, logs]) after.push(await again.fit(request));
    warm.evaluations.forEach((count, at) => {
      expect(count).toBeLessThan(cold.evaluations[at] ?? 0);
    });
    // The two linear models have the same terms and differ in what they explain.
    const residuals = warm.asked.map(({ input }) => input.start?.residual);
    expect(residuals[0]).toBeUndefined();
    expect(residuals[1]).not.toBe(residuals[2]);
    before.forEach((answer, at) => {
      const other = after[at];
      if (answer.kind !== 'answer' || other?.kind !== 'answer') throw new Error('no fit');
      expect(other.fit.minusTwoLogLikelihood).toBeCloseTo(answer.fit.minusTwoLogLikelihood, 8);
    });
  });

  it('starts as usual what it has never fitted', async () => {
    const seen = watched();
    const { fit: fitAgain } = warmFit(seen.fitHere, { 'binomial: other 1': { deviations: { other: 1 } } });
    await fitAgain(losses);
    expect(seen.asked[0]).toBe(losses);
  });

  it('starts few rows as usual, too, so that records voided and taken back have the answer they had', async () => {
    const fewer = batches.slice(1);
    const few: FitRequest = {
      kind: 'linear',
      input: { response: fewer.map(({ be }) => be), ...termsOf(fewer) },
    };
    const first = warmFit(watched().fitHere, {});
    await first.fit(few);
    const seen = watched();
    await warmFit(seen.fitHere, first.starts).fit(few);
    expect(seen.asked[0]).toBe(few);
  });
});
