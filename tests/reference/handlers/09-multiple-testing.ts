import { z } from 'zod';
import { adjustPValues } from '../../../lib/stats/multiplicity/adjust-p-values';
import { binomialTest } from '../../../lib/stats/watching/binomial-test';
import { observedExpected } from '../../../lib/stats/watching/observed-expected';
import { poissonBinomialTest } from '../../../lib/stats/watching/poisson-binomial-test';
import type { TailProbabilities } from '../../../lib/stats/watching/tail-probabilities';
import { limitsOrNull, orNull } from '../or-null';
import { plainTolerance, type ReferenceHandler } from '../reference-handler';

const pValues = z.strictObject({ p: z.array(z.number().nullable()) });
const counts = z.strictObject({ observed: z.number(), expected_count: z.number(), conf: z.number() });
const binomial = z.strictObject({ x: z.number(), n: z.number(), p0: z.number() });
const poissonBinomial = z.strictObject({ x: z.number(), probs: z.array(z.number()) });

function oneSided(tails: TailProbabilities) {
  return {
    p_upper: tails.upper,
    p_lower: tails.lower,
    p_upper_mid: tails.upperMidP,
    p_lower_mid: tails.lowerMidP,
  };
}

function allTails(tails: TailProbabilities) {
  return {
    ...oneSided(tails),
    p_two_sided_doubled: tails.twoSidedDoubled,
    p_two_sided_mid_doubled: tails.twoSidedMidP,
  };
}

function adjusted({ p }: z.infer<typeof pValues>) {
  return {
    BH: adjustPValues(p, 'benjamini-hochberg'),
    holm: adjustPValues(p, 'holm'),
    hochberg: adjustPValues(p, 'hochberg'),
    bonferroni: adjustPValues(p, 'bonferroni'),
    BY: adjustPValues(p, 'benjamini-yekutieli'),
    hommel: adjustPValues(p, 'hommel'),
  };
}

function ratio({ observed, expected_count: expected, conf }: z.infer<typeof counts>) {
  const answer = orNull(observedExpected(observed, expected, conf));
  if (answer === null) return {};
  return {
    ratio: answer.estimate,
    exact: limitsOrNull(answer.exactInterval),
    byar: limitsOrNull(answer.byarInterval),
    mid_p: limitsOrNull(answer.interval),
    ...allTails(answer.tails),
    p_two_sided_minlike: answer.twoSidedLeastLikely,
  };
}

function binomialCase({ x, n, p0 }: z.infer<typeof binomial>) {
  const answer = orNull(binomialTest(x, n, p0));
  if (answer === null) return {};
  const leastLikely = answer.twoSidedLeastLikely;
  return {
    expected: answer.expectedEvents,
    ...allTails(answer.tails),
    // For p0 of 0 or 1 binom.test gives its p-value as TRUE or FALSE.
    p_two_sided_minlike: p0 === 0 || p0 === 1 ? leastLikely === 1 : leastLikely,
    z: orNull(answer.z),
  };
}

function poissonBinomialCase({ x, probs }: z.infer<typeof poissonBinomial>) {
  const answer = orNull(poissonBinomialTest(x, probs));
  if (answer === null) return {};
  return {
    expected: answer.expectedEvents,
    variance: answer.variance,
    pmf_at_x: answer.atCount,
    ...oneSided(answer.tails),
    oe_ratio: orNull(answer.ratio),
    z: orNull(answer.z),
    pmf: answer.densities,
  };
}

export const handler: ReferenceHandler = {
  method: '09 multiple testing, observed against expected, Poisson-binomial',
  tolerance: plainTolerance,
  run(caseInput) {
    const asked = z.union([pValues, counts, binomial, poissonBinomial]).parse(caseInput);
    if ('p' in asked) return adjusted(asked);
    if ('observed' in asked) return ratio(asked);
    if ('p0' in asked) return binomialCase(asked);
    return poissonBinomialCase(asked);
  },
};
