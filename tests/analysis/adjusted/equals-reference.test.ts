import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { contaminationRequest } from '@/lib/analysis/adjusted/contamination-request';
import { efficiencyRequest } from '@/lib/analysis/adjusted/efficiency-request';
import type { RandomTermName } from '@/lib/analysis/adjusted/model-terms';
import { answerRequest } from '@/lib/analysis/fitting/answer-request';
import type { FitRequest } from '@/lib/analysis/fitting/fit-request';
import { logistic } from '@/lib/stats/mixed/binomial/marginal-probability';

/* The simulated network of 24 sites and 3,000 batches, fitted by lme4 1.1.31 and emmeans in R 4.2.2. */
const column = z.array(z.number().nullable());
const names = z.array(z.string());
const model = z.object({ fixef: z.record(z.string(), z.number()), sd: z.record(z.string(), z.number()) });
const file = z
  .object({
    cases: z.array(
      z.object({
        input: z.object({
          data: z.object({
            batch: names,
            site: names,
            method: names,
            lot: names,
            status: names,
            units: z.array(z.number()),
            contaminated: z.array(z.number()),
            dry_kg: z.array(z.number()),
            flush1_kg: column,
            flush2_kg: column,
            flush3_kg: column,
          }),
        }),
        expected: z.object({
          contamination_glmm_site_lot: model.extend({
            method_prob_at_zero: z.object({
              level: names,
              prob: z.array(z.number()),
              lower: z.array(z.number()),
            }),
          }),
          contamination_glmm_site_lot_batch: model,
          be_lmm_percent: model,
          be_lmm_log: model,
        }),
      }),
    ),
  })
  .parse(
    JSON.parse(
      readFileSync(new URL('../../reference/data/15_network_simulated.json', import.meta.url), 'utf8'),
    ),
  );
const [only] = file.cases;
if (only === undefined) throw new Error('the reference file has no case');
const { data } = only.input;
const { expected } = only;

const batches = data.batch.flatMap((id, row) => {
  if (data.status[row] !== 'closed') return [];
  const flushes = [data.flush1_kg[row], data.flush2_kg[row], data.flush3_kg[row]];
  const fresh = flushes.reduce((sum: number, kg) => sum + (kg ?? 0), 0);
  const own = { siteId: data.site[row] ?? '', methodKey: data.method[row] ?? '', run: id, season: '1' };
  return [
    {
      ...own,
      id,
      speciesId: 'one',
      materialId: 'one',
      materialLot: id,
      spawnLot: data.lot[row] ?? '',
      inoculatedOn: '2026-01-01',
      assessedOn: '2026-02-01',
      units: data.units[row] ?? 0,
      contaminated: data.contaminated[row] ?? 0,
      bePercent: (100 * fresh) / (data.dry_kg[row] ?? 1),
    },
  ];
});
const harvested = batches.filter(({ id }) => {
  const row = data.batch.indexOf(id);
  return data.flush1_kg[row] !== null;
});

const options = { levelledOut: { material: false, season: false }, sites: 'partly' } as const;

function fitted(request: FitRequest) {
  const answer = answerRequest(request);
  if (answer.kind === 'cannot-compute') throw new Error(answer.explanation);
  const coefficient = (name: string) => answer.fit.coefficients.find((one) => one.name === name)?.estimate;
  const deviation = (term: string) =>
    answer.fit.varianceComponents.find((one) => one.term === term)?.standardDeviation;
  return { answer, coefficient, deviation };
}

describe('adjusted figures', () => {
  it.each<['contamination_glmm_site_lot' | 'contamination_glmm_site_lot_batch', RandomTermName[]]>([
    ['contamination_glmm_site_lot', ['site', 'spawn lot']],
    ['contamination_glmm_site_lot_batch', ['site', 'spawn lot', 'batch']],
  ])('equal those of lme4 for %s', (name, random) => {
    const { coefficient, deviation } = fitted(contaminationRequest(batches, { ...options, random }));
    const own = expected[name];
    for (const [of, value] of Object.entries(own.fixef))
      expect(Math.abs(Number(coefficient(of)) - value), of).toBeLessThan(1e-3);
    expect(deviation('site')).toBeCloseTo(own.sd.site ?? 0, 2);
    expect(deviation('spawn lot')).toBeCloseTo(own.sd.lot ?? 0, 2);
  });

  it('equal the probabilities that R gives for each method at a typical site', () => {
    const { answer } = fitted(contaminationRequest(batches, { ...options, random: ['site', 'spawn lot'] }));
    const means = answer.means.method?.means ?? [];
    const { level, prob } = expected.contamination_glmm_site_lot.method_prob_at_zero;
    expect(means.map((mean) => mean.level)).toEqual(level);
    means.forEach((mean, index) => {
      expect(mean.kind === 'estimate' ? logistic(mean.estimate) : 0).toBeCloseTo(prob[index] ?? 0, 4);
    });
  });

  it.each<['be_lmm_percent' | 'be_lmm_log', 'all' | 'cropped']>([
    ['be_lmm_percent', 'all'],
    ['be_lmm_log', 'cropped'],
  ])('equal those of lme4 for %s', (name, of) => {
    const { coefficient, deviation } = fitted(
      efficiencyRequest(harvested, { ...options, of, random: ['site', 'spawn lot'] }),
    );
    const { fixef, sd } = expected[name];
    // The logarithm is taken of percent here and of a fraction there.
    const shift = of === 'cropped' ? Math.log(100) : 0;
    for (const [term, value] of Object.entries(fixef)) {
      const theirs = term === '(Intercept)' ? value + shift : value;
      expect(Math.abs(Number(coefficient(term)) - theirs) / Math.abs(theirs), term).toBeLessThan(1e-4);
    }
    expect(deviation('site')).toBeCloseTo(sd.site ?? 0, 3);
    expect(deviation('spawn lot')).toBeCloseTo(sd.lot ?? 0, 3);
  });
});
