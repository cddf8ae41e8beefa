import { z } from 'zod';
import { cumulativeIncidence } from '../../../lib/stats/survival/cumulative-incidence';
import { type KaplanMeier, kaplanMeier } from '../../../lib/stats/survival/kaplan-meier';
import { logRank } from '../../../lib/stats/survival/log-rank';
import { restrictedMean } from '../../../lib/stats/survival/restricted-mean';
import type { SurvivalTransform } from '../../../lib/stats/survival/survival-interval';
import { timeQuantile } from '../../../lib/stats/survival/time-quantile';
import { limitsOrNull, orNull } from '../or-null';
import { plainTolerance, type ReferenceHandler } from '../reference-handler';

const numbers = z.array(z.number());
const names = z.array(z.string());
const curve = z.strictObject({ time: numbers, status: numbers, conf: z.number() });
const comparison = z.strictObject({ time: numbers, status: numbers, group: names, strata: names.nullable() });
const incidence = z.strictObject({ time: numbers, code: numbers });
const incidenceByGroup = z.strictObject({ time: numbers, code: numbers, group: names });

function columns(steps: KaplanMeier['steps']) {
  const limits = steps.map((step) => limitsOrNull(step.interval));
  return { lower: limits.map(({ lower }) => lower), upper: limits.map(({ upper }) => upper) };
}

function curveCase({ time, status, conf: level }: z.infer<typeof curve>) {
  const followUps = time.map((t, index) => ({ time: t, cause: status[index] === 1 ? 'event' : null }));
  const curveOn = (transform: SurvivalTransform) => {
    const answer = orNull(kaplanMeier(followUps, { level, transform, variance: 'independent' }));
    if (answer === null) throw new Error('a curve without units');
    return answer;
  };
  const [plain, log, logLog] = [curveOn('plain'), curveOn('log'), curveOn('log-log')];
  const median = timeQuantile(log, 0.5);
  const medianLimits = (answer: KaplanMeier) => {
    const { low, high } = timeQuantile(answer, 0.5);
    return { lower: orNull(low), upper: orNull(high) };
  };
  const mean = orNull(restrictedMean(plain));
  return {
    time: plain.steps.map((step) => step.time),
    n_risk: plain.steps.map((step) => step.atRisk),
    n_event: plain.steps.map((step) => step.events),
    n_censor: plain.steps.map((step) => step.censored),
    surv: plain.steps.map((step) => step.survival),
    se_greenwood: plain.steps.map((step) => orNull(step.standardError)),
    plain: columns(plain.steps),
    log: columns(log.steps),
    log_log: columns(logLog.steps),
    median: { estimate: orNull(median.estimate), log: medianLimits(log), log_log: medianLimits(logLog) },
    rmst: { tau: mean?.until ?? null, estimate: mean?.estimate ?? null, se: mean?.standardError ?? null },
  };
}

function comparisonCase({ time, status, group, strata }: z.infer<typeof comparison>) {
  const answer = orNull(
    logRank(
      time.map((t, index) => ({
        time: t,
        cause: status[index] === 1 ? 'event' : null,
        group: group[index] ?? '',
        stratum: strata?.[index] ?? '',
      })),
      'independent',
    ),
  );
  if (answer === null) return {};
  return {
    groups: answer.groups,
    observed: answer.observed,
    expected: answer.expected,
    variance: answer.covariance,
    chisq: answer.statistic,
    df: answer.degreesOfFreedom,
    p_value: answer.pValue,
  };
}

function incidenceCase({ time, code }: z.infer<typeof incidence>) {
  const causes = Array.from({ length: Math.max(...code) }, (_, index) => index + 1);
  const answer = orNull(
    cumulativeIncidence(
      time.map((t, index) => {
        const cause = code[index] ?? 0;
        return { time: t, cause: cause === 0 ? null : String(cause) };
      }),
      { level: 0.95, variance: 'independent', causes: causes.map(String) },
    ),
  );
  const steps = answer?.causes[0]?.steps ?? [];
  return {
    time: steps.map((step) => step.time),
    n_risk: steps.map((step) => step.atRisk),
    overall_surv: answer?.overallSurvival,
    causes: causes.map((cause) => {
      const own = answer?.causes.find((each) => each.cause === String(cause))?.steps ?? [];
      const standardErrors = own.map((step) => orNull(step.standardError));
      return {
        cause,
        n_event: own.map((step) => step.events),
        cif: own.map((step) => step.incidence),
        // One variance under its two names: the jackknife of independent units is the delta-method one.
        se_delta: standardErrors,
        se_survfit_infinitesimal_jackknife: standardErrors,
      };
    }),
  };
}

export const handler: ReferenceHandler = {
  method: '06 survival and competing risks',
  tolerance: plainTolerance,
  run(caseInput) {
    const asked = z.union([curve, comparison, incidence, incidenceByGroup]).parse(caseInput);
    if ('conf' in asked) return curveCase(asked);
    if ('strata' in asked) return comparisonCase(asked);
    if ('group' in asked) return {};
    return incidenceCase(asked);
  },
};
