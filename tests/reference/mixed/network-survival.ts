import { cumulativeIncidence } from '../../../lib/stats/survival/cumulative-incidence';
import { logRank } from '../../../lib/stats/survival/log-rank';
import { orNull } from '../or-null';
import type { NetworkBatch } from './network-data';

const CAUSES: Readonly<Record<string, string>> = { harvest: 'harvest', discarded: 'discard' };

/** Cumulative incidence of harvest and discarding at the given days, batches open or lost being censored. */
export function incidencesAt(batches: readonly NetworkBatch[], times: readonly number[]) {
  const curves = orNull(
    cumulativeIncidence(
      batches.map(({ firstEventDay, firstEvent }) => ({
        time: firstEventDay,
        cause: CAUSES[firstEvent] ?? null,
      })),
      { level: 0.95, variance: 'independent', causes: ['harvest', 'discard'] },
    ),
  );
  const at = (cause: string) => {
    const steps = curves?.causes.find((own) => own.cause === cause)?.steps ?? [];
    return times.map((time) => steps.filter((step) => step.time <= time).at(-1));
  };
  const [harvest, discard] = [at('harvest'), at('discard')];
  return {
    times,
    n_risk: times.map((time) => batches.filter(({ firstEventDay }) => firstEventDay >= time).length),
    cif_harvest: harvest.map((step) => step?.incidence ?? 0),
    cif_discard: discard.map((step) => step?.incidence ?? 0),
    se_survfit_harvest: harvest.map((step) => orNull(step?.standardError) ?? 0),
    se_survfit_discard: discard.map((step) => orNull(step?.standardError) ?? 0),
  };
}

/** Log-rank test of discarding by method, within sites when asked. */
export function discardLogRank(batches: readonly NetworkBatch[], bySite: boolean) {
  const test = orNull(
    logRank(
      batches.map(({ firstEventDay, firstEvent, method, site }) => ({
        time: firstEventDay,
        cause: firstEvent === 'discarded' ? 'discard' : null,
        group: method,
        ...(bySite ? { stratum: site } : {}),
      })),
      'independent',
    ),
  );
  return {
    groups: test?.groups,
    observed: test?.observed,
    expected: test?.expected,
    chisq: test?.statistic,
    df: test?.degreesOfFreedom,
    p_value: test?.pValue,
  };
}
