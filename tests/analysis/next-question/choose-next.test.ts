import { expect, test } from 'vitest';
import type { PlainFit } from '@/lib/analysis/fitting/plain-fit';
import { chooseNext } from '@/lib/analysis/next-question/choose-next';
import { spreadOf, whatTeaches } from '@/lib/analysis/next-question/what-teaches';
import { seededRandom } from '@/lib/stats/random/seeded-random';

const infinite = [0, 1, 2].map(() => [0, 1, 2].map(() => Number.POSITIVE_INFINITY));
const compared = {
  methods: ['bath', 'ferment', 'lime'],
  by: 'yield' as const,
  expected: {
    estimates: [60, 40, 57],
    // What all three share is large, what is their own is small.
    covariance: [
      [109, 100, 100],
      [100, 109, 100],
      [100, 100, 116],
    ],
    degreesOfFreedom: infinite,
  },
};

test('the difference at the site decides, not how the site does as a whole', () => {
  expect(chooseNext(compared)).toEqual({
    kind: 'told',
    by: 'yield',
    leader: 'bath',
    equal: ['lime'],
    worse: ['ferment'],
  });
});

test('among equal methods the one that happens to lead is told from another in one case of twenty at most', () => {
  const random = seededRandom(20261126);
  const methods = ['bath', 'ferment', 'lime', 'steam', 'none'];
  const covariance = methods.map((_, one) => methods.map((__, other) => (one === other ? 9 : 0)));
  const degreesOfFreedom = methods.map(() => methods.map(() => Number.POSITIVE_INFINITY));
  let told = 0;
  for (let time = 0; time < 4000; time += 1) {
    const estimates = methods.map(() => 50 + 3 * random.normal());
    const verdict = chooseNext({
      methods,
      by: 'yield',
      expected: { estimates, covariance, degreesOfFreedom },
    });
    if (verdict.kind === 'told' && verdict.worse.length > 0) told += 1;
  }
  expect(told / 4000).toBeLessThan(0.055);
  expect(told / 4000).toBeGreaterThan(0.02);
});

test('by losses the fewest lead', () => {
  expect(chooseNext({ ...compared, by: 'loss' })).toMatchObject({ leader: 'ferment', equal: [] });
});

test('a method that cannot be worked out takes no part', () => {
  const reason = { kind: 'cannot-compute', reason: 'not-identifiable', explanation: '' } as const;
  const without = { ...compared, expected: { ...compared.expected, estimates: [reason, 40, 57] } };
  expect(chooseNext(without)).toMatchObject({ leader: 'lime', worse: ['ferment'] });
  const none = { ...compared, expected: { ...compared.expected, estimates: [reason, reason, reason] } };
  expect(chooseNext(none)).toEqual({ kind: 'cannot', reason: 'too-thin' });
});

const fit = {
  method: 'linear mixed model, REML',
  observations: 100,
  coefficients: [],
  varianceComponents: [
    { term: 'run', levels: 50, variance: 20, standardDeviation: Math.sqrt(20) },
    { term: 'spawn lot', levels: 12, variance: 8, standardDeviation: Math.sqrt(8) },
  ],
  zeroVarianceTerms: [],
  minusTwoLogLikelihood: 0,
  parameters: 4,
  randomEffects: [],
  fitted: new Float64Array(),
  evaluations: 1,
  residualStandardDeviation: 10,
} satisfies PlainFit;

test('four batches of the method known least narrow the open difference most, by the sums a hand can check', () => {
  const teaching = whatTeaches(compared, chooseNext(compared), {
    spread: spreadOf(fit),
    scale: 1,
    unitsNoise: 0,
  });
  if (teaching.kind !== 'lessons') throw new Error('nothing is open');
  expect(teaching.pair).toEqual(['bath', 'lime']);
  // Now: 109 + 116 - 200 = 25. Noise of a lesson: (100 + 20) / 4 + 8 / 2 = 34.
  const left = 25 - (116 - 100) ** 2 / (116 + 34);
  expect(teaching.lessons[0]?.methodId).toBe('lime');
  expect(teaching.lessons[0]?.from).toBeCloseTo(1.959964 * 5, 4);
  expect(teaching.lessons[0]?.to).toBeCloseTo(1.959964 * Math.sqrt(left), 4);
});

test('nothing is left to learn where every method is told apart, or there is but one', () => {
  const ask = (methods: readonly string[]) => {
    const some = {
      ...compared,
      methods,
      expected: { ...compared.expected, estimates: [60, 20, 10].slice(0, methods.length) },
    };
    return whatTeaches(some, chooseNext(some), { spread: spreadOf(fit), scale: 1, unitsNoise: 0 });
  };
  expect(ask(['bath', 'ferment', 'lime'])).toEqual({ kind: 'none', reason: 'settled' });
  expect(ask(['bath'])).toEqual({ kind: 'none', reason: 'one-method' });
});
