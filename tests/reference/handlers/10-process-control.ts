import { z } from 'zod';
import { binomialTest } from '../../../lib/stats/watching/binomial-test';
import { cusumPath } from '../../../lib/stats/watching/cusum-path';
import { cusumRunLength } from '../../../lib/stats/watching/cusum-run-length';
import { cusumWeights } from '../../../lib/stats/watching/cusum-weights';
import { ewmaProportion } from '../../../lib/stats/watching/ewma-proportion';
import { exactFunnelLimit } from '../../../lib/stats/watching/exact-funnel-limit';
import { funnel } from '../../../lib/stats/watching/funnel';
import { normalFunnelLimit, type Widening } from '../../../lib/stats/watching/normal-funnel-limit';
import { pChart } from '../../../lib/stats/watching/p-chart';
import { orNull } from '../or-null';
import { plainTolerance, type ReferenceHandler } from '../reference-handler';

const numbers = z.array(z.number());
const oneOrMany = z.union([z.number(), numbers]);

const funnelInput = z.strictObject({
  x: numbers,
  n: numbers,
  theta0: z.number().nullable(),
  winsor_q: z.number(),
});
const limitGrid = z.strictObject({ n: numbers, theta0: numbers, probs: numbers });
const weightsInput = z.strictObject({ p: numbers, R0: z.number(), RA: numbers });
const cusumDesign = { R0: z.number(), RA: z.number(), h: z.number(), reset: z.boolean() };
const unitsInput = z.strictObject({ y: numbers, p: oneOrMany, ...cusumDesign });
const batchesInput = z.strictObject({ x: numbers, n: numbers, p: oneOrMany, ...cusumDesign });
const runLengthInput = z.strictObject({
  p0: numbers,
  RA: numbers,
  h: numbers,
  scale: numbers,
  true_odds: numbers,
});
const ewmaInput = z.strictObject({
  x: numbers,
  n: numbers,
  p0: z.number(),
  lambda: z.number(),
  L: z.number(),
});
const pChartInput = z.strictObject({ x: numbers, n: numbers });

const at = (values: number | number[], index: number): number =>
  typeof values === 'number' ? values : (values[index] ?? Number.NaN);

function funnelCase({ x, n, theta0, winsor_q }: z.infer<typeof funnelInput>, expected: unknown) {
  const { probs } = z.object({ probs: numbers }).parse(expected);
  const sites = x.map((events, index) => ({ label: String(index), events, units: at(n, index) }));
  const answer = orNull(funnel(sites, { target: theta0 ?? undefined, winsorise: winsor_q }));
  if (answer === null) return {};
  const { target, points } = answer;
  const exact = points.map(({ units }) => probs.map((p) => exactFunnelLimit(target, units, p)));
  const normal = (widening: Widening) =>
    points.map(({ standardError }) =>
      probs.map((p) => normalFunnelLimit(target, standardError, p, widening)),
    );
  return {
    target,
    proportion: points.map((point) => point.proportion),
    se0: points.map((point) => point.standardError),
    z: points.map((point) => point.z),
    probs,
    exact_interpolated_raw: exact,
    exact_interpolated: exact.map((row) => row.map((limit) => Math.min(1, Math.max(0, limit)))),
    normal: normal({ kind: 'none' }),
    winsor_limits: answer.winsorLimits,
    z_winsorised: points.map((point) => point.winsorisedZ),
    phi_winsorised: answer.dispersion,
    phi_raw: answer.rawDispersion,
    overdispersion_p_value: answer.overdispersionPValue,
    multiplicative_limits: normal({ kind: 'multiplicative', dispersion: answer.dispersion }),
    tau2: answer.betweenVariance,
    z_additive: points.map((point) => point.additiveZ),
    additive_limits: normal({ kind: 'additive', betweenVariance: answer.betweenVariance }),
    p_exact_upper_mid: points.map(
      ({ events, units }) => orNull(binomialTest(events, units, target))?.tails.upperMidP ?? null,
    ),
  };
}

function weightsCase({ p, R0, RA }: z.infer<typeof weightsInput>) {
  return Object.fromEntries(
    RA.map((alarmOdds) => {
      const weights = p.map((probability) => cusumWeights(probability, { inControlOdds: R0, alarmOdds }));
      const name = alarmOdds === 0.5 ? 'RA_half' : `RA_${alarmOdds}`;
      return [name, { w1: weights.map((w) => w.event), w0: weights.map((w) => w.noEvent) }];
    }),
  );
}

function cusumCase(
  { p, R0, RA, h, reset }: Pick<z.infer<typeof unitsInput>, 'p' | 'R0' | 'RA' | 'h' | 'reset'>,
  events: number[],
  units: number[],
) {
  const steps = events.map((count, index) => ({
    events: count,
    units: at(units, index),
    probability: at(p, index),
  }));
  const { weights, path, signals } = cusumPath(
    steps,
    { inControlOdds: R0, alarmOdds: RA },
    { limit: h, reset },
  );
  return { weights, path, signals_1_based: signals.map((step) => step + 1) };
}

function runLengthCase({ p0, RA, h, scale, true_odds }: z.infer<typeof runLengthInput>) {
  const arl = p0.map((probability, index) =>
    orNull(
      cusumRunLength([{ units: 1, probability }], at(h, index), {
        shift: { inControlOdds: 1, alarmOdds: at(RA, index) },
        intraBatchCorrelation: 0,
        scale: at(scale, index),
        rounding: 'nearest',
        trueOdds: at(true_odds, index),
      }),
    ),
  );
  return { arl };
}

function ewmaCase({ x, n, p0, lambda, L }: z.infer<typeof ewmaInput>) {
  const { points } = ewmaProportion(
    x.map((events, index) => ({ events, units: at(n, index) })),
    { centre: p0, weight: lambda, width: L, intraBatchCorrelation: 0 },
  );
  return {
    ewma: points.map((point) => point.value),
    se: points.map((point) => point.standardError),
    lcl_raw: points.map((point) => point.low),
    ucl_raw: points.map((point) => point.high),
    lcl: points.map((point) => Math.max(0, point.low)),
    ucl: points.map((point) => Math.min(1, point.high)),
    signals_1_based: points.flatMap((point, index) => (point.signal ? [index + 1] : [])),
  };
}

function pChartCase({ x, n }: z.infer<typeof pChartInput>) {
  const answer = orNull(pChart(x.map((events, index) => ({ events, units: at(n, index) }))));
  if (answer === null) return {};
  return {
    centre: answer.centre,
    lcl: answer.points.map((point) => point.low),
    ucl: answer.points.map((point) => point.high),
    out_1_based: answer.points.flatMap((point, index) => (point.outside ? [index + 1] : [])),
    laney_sigma_z: orNull(answer.laneySigma),
    laney_lcl: answer.points.map((point) => orNull(point.laneyLow)),
    laney_ucl: answer.points.map((point) => orNull(point.laneyHigh)),
  };
}

export const handler: ReferenceHandler = {
  method: '10 funnel plots, CUSUM, EWMA, p chart',
  tolerance: plainTolerance,
  run(caseInput, { expected }) {
    const asked = z
      .union([
        funnelInput,
        limitGrid,
        weightsInput,
        unitsInput,
        batchesInput,
        runLengthInput,
        ewmaInput,
        pChartInput,
      ])
      .parse(caseInput);
    if ('winsor_q' in asked) return funnelCase(asked, expected);
    if ('probs' in asked) {
      const { n, theta0, probs } = asked;
      return {
        raw_limits: n.map((units, index) =>
          probs.map((probability) => exactFunnelLimit(at(theta0, index), units, probability)),
        ),
      };
    }
    if ('true_odds' in asked) return runLengthCase(asked);
    if ('lambda' in asked) return ewmaCase(asked);
    if ('y' in asked)
      return cusumCase(
        asked,
        asked.y,
        asked.y.map(() => 1),
      );
    if ('h' in asked) return cusumCase(asked, asked.x, asked.n);
    if ('RA' in asked) return weightsCase(asked);
    return pChartCase(asked);
  },
};
