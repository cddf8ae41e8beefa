import { expect, test } from 'vitest';
import { prepareBinomial } from '../../../../lib/stats/mixed/binomial/binomial-model';
import { jointHessian } from '../../../../lib/stats/mixed/binomial/joint-hessian';
import { LaplaceCriterion } from '../../../../lib/stats/mixed/binomial/laplace-criterion';
import { probeGradients } from '../../../../lib/stats/mixed/binomial/probe-gradient';
import { QuadratureCriterion } from '../../../../lib/stats/mixed/binomial/quadrature-criterion';
import { prepareLinear } from '../../../../lib/stats/mixed/linear/linear-model';
import { ProfiledCriterion } from '../../../../lib/stats/mixed/linear/profiled-criterion';
import type { Criterion } from '../../../../lib/stats/mixed/optimise/criterion';
import { minimise } from '../../../../lib/stats/mixed/optimise/minimise';
import { estimated } from '../../../reference/mixed/mixed-case';
import { simulatedBatches, termsOf } from '../simulated-batches';

const batches = simulatedBatches(21, 70);
const counts = {
  events: batches.map(({ contaminated }) => contaminated),
  trials: batches.map(({ units }) => units),
};

function expectGradient(criterion: Criterion, x: Float64Array) {
  criterion.value(x);
  const { gradient } = criterion.derivatives();
  x.forEach((_, i) => {
    const at = (shift: number) => criterion.value(x.map((value, k) => (k === i ? value + shift : value)));
    const numeric = (at(1e-5) - at(-1e-5)) / 2e-5;
    expect(gradient[i]).toBeCloseTo(numeric, 4);
  });
}

test('the gradient of the restricted and the ordinary criterion is that of differences', () => {
  const model = estimated(prepareLinear({ response: batches.map(({ be }) => be), ...termsOf(batches) }));
  for (const restricted of [true, false]) {
    expectGradient(new ProfiledCriterion(model.system, model.cross, restricted), Float64Array.of(0.7, 0.3));
  }
});

test('the gradient of the Laplace criterion is that of differences', () => {
  const model = estimated(prepareBinomial({ ...counts, ...termsOf(batches) }));
  expectGradient(new LaplaceCriterion(model), Float64Array.of(0.8, 0.4, ...model.regression.b));
});

test('the gradient of the quadrature criterion is that of differences', () => {
  const { fixed, random } = termsOf(batches);
  const model = estimated(
    prepareBinomial({ ...counts, fixed, random: random.slice(0, 1), quadraturePoints: 7 }),
  );
  expectGradient(new QuadratureCriterion(model), Float64Array.of(0.8, ...model.regression.b));
});

test('a Hessian from probes is near the exact one', () => {
  const many = simulatedBatches(22, 1500, 150, 200);
  const model = estimated(
    prepareBinomial({
      events: many.map(({ contaminated }) => contaminated),
      trials: many.map(({ units }) => units),
      ...termsOf(many),
    }),
  );
  const criterion = new LaplaceCriterion(model);
  const x = minimise(criterion, Float64Array.of(0.7, 0.4, ...model.regression.b)).x;
  criterion.value(x);
  const { curvature } = criterion.derivatives();
  const free = [...x.keys()];
  const exact = jointHessian(
    (at) => {
      criterion.value(at);
      return criterion.gradient();
    },
    x,
    curvature,
    free,
    false,
  );
  criterion.value(x);
  const probed = jointHessian(probeGradients(criterion), x, curvature, free, true);
  free.forEach((i) => {
    const own = exact[i * x.length + i] ?? Number.NaN;
    expect(Math.abs((probed[i * x.length + i] ?? 0) / own - 1)).toBeLessThan(0.1);
    if (i >= 2) expect(Math.abs((probed[i * x.length + i] ?? 0) / own - 1)).toBeLessThan(0.01);
  });
});
