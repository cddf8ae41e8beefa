import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { tSurvival } from '@/lib/stats/distribution/student-t';
import { clustersNeeded } from '@/lib/stats/planning/clusters-needed';
import { designEffect } from '@/lib/stats/planning/design-effect';
import { noncentralTSurvival } from '@/lib/stats/planning/noncentral-t';
import { twoMeansDetectable } from '@/lib/stats/planning/two-means-detectable';
import { twoMeansPower } from '@/lib/stats/planning/two-means-power';
import { twoMeansSampleSize } from '@/lib/stats/planning/two-means-sample-size';
import { twoProportionsDetectable } from '@/lib/stats/planning/two-proportions-detectable';
import { twoProportionsPower } from '@/lib/stats/planning/two-proportions-power';
import {
  twoProportionsSampleSize,
  twoProportionsSampleSizeBothTails,
} from '@/lib/stats/planning/two-proportions-sample-size';

const rate = fc.double({ min: 0.02, max: 0.98, noNaN: true });
const significance = 0.05;

describe('planning for two proportions', () => {
  it('gives the published sizes of a textbook table', () => {
    // Fleiss (1981, table A.3, from memory): 60 % against 70 %, power 80 %: 376 a group with the correction.
    const plan = twoProportionsSampleSize({ first: 0.6, second: 0.7, power: 0.8, significance, ratio: 1 });
    expect(plan).toMatchObject({ firstGroupWhole: 356, firstGroupCorrectedWhole: 376 });
  });

  it('has the power asked for at the size it gives', () => {
    fc.assert(
      fc.property(rate, rate, fc.double({ min: 0.5, max: 0.99, noNaN: true }), (first, second, power) => {
        fc.pre(Math.abs(first - second) > 0.01);
        const plan = twoProportionsSampleSize({ first, second, power, significance, ratio: 1 });
        if (plan.kind !== 'sample-size') throw new Error(plan.explanation);
        expect(twoProportionsPower({ first, second, perGroup: plan.firstGroup, significance })).toBeCloseTo(
          power,
          9,
        );
        const both = twoProportionsSampleSizeBothTails({ first, second, power, significance });
        expect(both).toBeLessThanOrEqual(plan.firstGroup);
      }),
    );
  });

  it('finds again the difference that a size was planned for', () => {
    fc.assert(
      fc.property(rate, rate, (reference, second) => {
        fc.pre(Math.abs(reference - second) > 0.01);
        const plan = twoProportionsSampleSize({
          first: reference,
          second,
          power: 0.8,
          significance,
          ratio: 1,
        });
        if (plan.kind !== 'sample-size') throw new Error(plan.explanation);
        const found = twoProportionsDetectable({
          reference,
          perGroup: plan.firstGroup,
          power: 0.8,
          significance,
        });
        expect(second < reference ? found.below : found.above).toBeCloseTo(second, 6);
      }),
    );
  });

  it('says when a side has no difference that so few batches could find', () => {
    const found = twoProportionsDetectable({ reference: 0.05, perGroup: 20, power: 0.8, significance });
    expect(found.below).toMatchObject({ reason: 'out-of-range' });
    expect(found.above).toBeGreaterThan(0.3);
  });

  it('does not care which group is called the first', () => {
    fc.assert(
      fc.property(rate, rate, fc.double({ min: 0.2, max: 5, noNaN: true }), (first, second, ratio) => {
        fc.pre(Math.abs(first - second) > 0.01);
        const one = twoProportionsSampleSize({ first, second, power: 0.8, significance, ratio });
        const other = twoProportionsSampleSize({
          first: second,
          second: first,
          power: 0.8,
          significance,
          ratio: 1 / ratio,
        });
        if (one.kind !== 'sample-size' || other.kind !== 'sample-size') throw new Error('no size');
        expect(other.secondGroup / one.firstGroup).toBeCloseTo(1, 8);
      }),
    );
  });

  it('names what is wrong and says what cannot be planned', () => {
    const plan = { first: 0.2, second: 0.1, power: 0.8, significance, ratio: 1 };
    expect(twoProportionsSampleSize({ ...plan, second: 0.2 })).toMatchObject({ reason: 'not-identifiable' });
    expect(twoProportionsSampleSize({ ...plan, power: 0.01 })).toMatchObject({ reason: 'out-of-range' });
    expect(() => twoProportionsSampleSize({ ...plan, first: 1.2 })).toThrow(/first/);
    expect(() => twoProportionsSampleSize({ ...plan, ratio: 0 })).toThrow(/ratio/);
    expect(() => twoProportionsPower({ ...plan, perGroup: -3 })).toThrow(/perGroup/);
  });
});

describe('planning for two means', () => {
  const plan = {
    difference: 1,
    standardDeviation: 1,
    significance,
    power: 0.9,
    design: 'independent',
  } as const;

  it('gives the published size and power of two textbook examples', () => {
    // Help page of R's power.t.test (from memory): n = 22.02 for power 0.9; power 0.8690 for n = 20.
    expect(twoMeansSampleSize(plan)).toMatchObject({
      perGroup: expect.closeTo(22.0211, 4),
      perGroupWhole: 23,
    });
    expect(twoMeansPower({ ...plan, perGroup: 20 })).toBeCloseTo(0.8689528, 7);
  });

  it('depends on the difference in standard deviations only, and finds it again', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.2, max: 3, noNaN: true }),
        fc.double({ min: 0.1, max: 50, noNaN: true }),
        fc.constantFrom('independent' as const, 'paired' as const),
        (effect, sd, design) => {
          const one = twoMeansSampleSize({ ...plan, design, difference: effect });
          const scaled = { ...plan, design, standardDeviation: sd };
          const other = twoMeansSampleSize({ ...scaled, difference: -effect * sd });
          if (one.kind !== 'sample-size' || other.kind !== 'sample-size') throw new Error('no size');
          expect(other.perGroup / one.perGroup).toBeCloseTo(1, 6);
          if (one.perGroup === 2) return;
          expect(twoMeansDetectable({ ...scaled, perGroup: one.perGroup })).toMatchObject({
            difference: expect.closeTo(effect * sd, 4),
          });
        },
      ),
      { numRuns: 25 },
    );
  });

  it('says what cannot be planned and names what is wrong', () => {
    expect(twoMeansSampleSize({ ...plan, difference: 0 })).toMatchObject({ reason: 'not-identifiable' });
    expect(twoMeansDetectable({ ...plan, perGroup: 20, power: 0.01 })).toMatchObject({
      reason: 'out-of-range',
    });
    expect(() => twoMeansSampleSize({ ...plan, standardDeviation: 0 })).toThrow(/standardDeviation/);
    expect(() => twoMeansPower({ ...plan, perGroup: 1 })).toThrow(/perGroup/);
  });
});

describe('noncentralTSurvival', () => {
  it('is the central t without noncentrality, for few and many degrees of freedom', () => {
    for (const df of [0.7, 1, 2, 3.5, 10, 60, 500, 5000]) {
      for (const t of [-4, -1, 0, 0.3, 2, 6]) {
        expect(noncentralTSurvival(t, df, 0)).toBeCloseTo(tSurvival(t, df), 11);
      }
    }
  });

  it('mirrors itself and rises with the noncentrality', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -5, max: 5, noNaN: true }),
        fc.double({ min: 1, max: 300, noNaN: true }),
        fc.double({ min: -6, max: 6, noNaN: true }),
        (t, df, delta) => {
          expect(noncentralTSurvival(t, df, delta) + noncentralTSurvival(-t, df, -delta)).toBeCloseTo(1, 10);
          expect(noncentralTSurvival(t, df, delta + 0.5)).toBeGreaterThanOrEqual(
            noncentralTSurvival(t, df, delta) - 1e-12,
          );
        },
      ),
    );
  });
});

describe('clustering', () => {
  it('inflates by the published design effect for unequal clusters', () => {
    // Eldridge, Ashby & Kerry (2006): 1 + ((cv^2 + 1) m - 1) icc.
    const clustering = { meanSize: 20, intraClusterCorrelation: 0.08, sizeVariation: 0.6 };
    expect(designEffect(clustering)).toBeCloseTo(3.096, 12);
    expect(clustersNeeded(100, clustering)).toMatchObject({
      observationsPerGroup: expect.closeTo(309.6, 9),
      clustersPerGroupWhole: 16,
    });
    expect(designEffect({ ...clustering, meanSize: 1, sizeVariation: 0 })).toBe(1);
    expect(() => designEffect({ ...clustering, meanSize: 0.5 })).toThrow(/meanSize/);
    expect(() => designEffect({ ...clustering, intraClusterCorrelation: -0.1 })).toThrow(/intraCluster/);
  });
});
