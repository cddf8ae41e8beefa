import { expect, test } from 'vitest';
import { answerRequest } from '../../../lib/analysis/fitting/answer-request';
import type { FitRequest } from '../../../lib/analysis/fitting/fit-request';
import { runFit } from '../../../lib/analysis/fitting/run-fit';
import { simulatedBatches, termsOf } from '../../stats/mixed/simulated-batches';

const batches = simulatedBatches(41, 60);
const request: FitRequest = {
  kind: 'binomial',
  input: {
    events: batches.map(({ contaminated }) => contaminated),
    trials: batches.map(({ units }) => units),
    ...termsOf(batches),
  },
  meansOf: ['method'],
  profiles: true,
  predict: [{ method: 'A', moisture: 60, site: 'S1' }],
};

test('the thread answers what the same work answers here', async () => {
  expect(await runFit(request)).toEqual(answerRequest(request));
});

test('a linear request is answered with means, profiles and predictions', () => {
  const answer = answerRequest({
    kind: 'linear',
    input: { response: batches.map(({ be }) => be), ...termsOf(batches) },
    meansOf: ['method'],
    profiles: true,
    predict: [{ method: 'A', moisture: 60 }],
  });
  if (answer.kind === 'cannot-compute') throw new Error(answer.explanation);
  expect(answer.means.method?.pairs).toHaveLength(3);
  expect(answer.profiles).toHaveLength(3);
  expect(answer.predictions).toHaveLength(1);
});

test('an aborted fit ends at once with the reason of the signal', async () => {
  const many = simulatedBatches(42, 20_000, 2_000, 3_000);
  const long: FitRequest = {
    kind: 'linear',
    input: { response: many.map(({ be }) => be), ...termsOf(many) },
  };
  const stop = new AbortController();
  const running = runFit(long, stop.signal);
  setTimeout(() => stop.abort(new Error('left the page')), 50);
  await expect(running).rejects.toThrow('left the page');
  await expect(runFit(long, stop.signal)).rejects.toThrow('left the page');
});

test('a bad argument comes back from the thread by its name', async () => {
  const bad: FitRequest = { kind: 'binomial', input: { events: [6], trials: [5], fixed: [], random: [] } };
  await expect(runFit(bad)).rejects.toMatchObject({ name: 'ArgumentError', argument: 'events[0]' });
});
