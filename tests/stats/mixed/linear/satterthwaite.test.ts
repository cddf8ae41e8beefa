import { expect, test } from 'vitest';
import { fitLinearMixed } from '../../../../lib/stats/mixed/linear/fit-linear';
import { satterthwaite } from '../../../../lib/stats/mixed/linear/satterthwaite';
import { estimated } from '../../../reference/mixed/mixed-case';
import { simulatedBatches, termsOf } from '../simulated-batches';

test('the average information gives nearly the degrees of freedom of the exact Hessian where levels are many', () => {
  const batches = simulatedBatches(11, 3_000, 150, 200);
  const fit = estimated(fitLinearMixed({ response: batches.map(({ be }) => be), ...termsOf(batches) }));
  const [exact, average] = [satterthwaite(fit, 'exact'), satterthwaite(fit, 'average')];
  for (let at = 0; at < fit.fixed.working.length; at++) {
    const c = Float64Array.from(fit.fixed.working, (_, i) => Number(i === at));
    expect(Math.abs(average(c) / exact(c) - 1)).toBeLessThan(0.03);
  }
  // A mean rests on the sites, a difference of methods on the batches.
  const mean = exact(Float64Array.from(fit.fixed.working, (_, i) => Number(i === 0)));
  expect(mean).toBeGreaterThan(100);
  expect(mean).toBeLessThan(400);
});
