import { z } from 'zod';
import type { CannotCompute } from '../../../lib/stats/outcome';
import { breslowDay } from '../../../lib/stats/stratified/breslow-day';
import { cochranMantelHaenszel } from '../../../lib/stats/stratified/cochran-mantel-haenszel';
import { mantelHaenszelOddsRatio } from '../../../lib/stats/stratified/mantel-haenszel-odds-ratio';
import { mantelHaenszelRiskDifference } from '../../../lib/stats/stratified/mantel-haenszel-risk-difference';
import { mantelHaenszelRiskRatio } from '../../../lib/stats/stratified/mantel-haenszel-risk-ratio';
import type { StratifiedEstimate } from '../../../lib/stats/stratified/stratified-result';
import { occupiedTables } from '../../../lib/stats/stratified/stratum';
import { limitsOrNull, orNull } from '../or-null';
import { plainTolerance, type ReferenceHandler } from '../reference-handler';

const counts = z.array(z.number());
const input = z.object({
  conf: z.number(),
  strata: z.object({ x1: counts, n1: counts, x2: counts, n2: counts }),
});

function ratio(result: StratifiedEstimate | CannotCompute, standardErrorKey: string) {
  const answer = orNull(result);
  return {
    estimate: answer?.estimate ?? null,
    [standardErrorKey]: orNull(answer?.standardError),
    ...limitsOrNull(answer?.interval),
  };
}

function difference(result: StratifiedEstimate | CannotCompute, variance: string) {
  const answer = orNull(result);
  const { lower, upper } = limitsOrNull(answer?.interval);
  return {
    estimate: answer?.estimate ?? null,
    [`se_${variance}`]: orNull(answer?.standardError),
    [`lower_${variance}`]: lower,
    [`upper_${variance}`]: upper,
  };
}

export const handler: ReferenceHandler = {
  method: '03 stratified comparison',
  tolerance: plainTolerance,
  run(caseInput) {
    const { conf, strata: columns } = input.parse(caseInput);
    const strata = columns.x1.map((events1, row) => ({
      label: String(row),
      events1,
      units1: columns.n1[row] ?? Number.NaN,
      events2: columns.x2[row] ?? Number.NaN,
      units2: columns.n2[row] ?? Number.NaN,
    }));
    const tables = occupiedTables(strata);
    const plain = orNull(cochranMantelHaenszel(strata, false));
    const corrected = orNull(cochranMantelHaenszel(strata, true));
    const homogeneity = orNull(breslowDay(strata, false));
    const tarone = orNull(breslowDay(strata, true));
    return {
      strata_used: tables.length,
      informative_strata: tables.filter((table) => table.informative).length,
      mh_odds_ratio: ratio(mantelHaenszelOddsRatio(strata, conf), 'se_log_rbg'),
      mh_risk_ratio: ratio(mantelHaenszelRiskRatio(strata, conf), 'se_log_greenland_robins'),
      mh_risk_difference: {
        ...difference(mantelHaenszelRiskDifference(strata, conf, 'sato'), 'sato'),
        ...difference(mantelHaenszelRiskDifference(strata, conf, 'greenland-robins'), 'greenland_robins'),
      },
      cmh: {
        statistic: plain?.statistic ?? null,
        df: 1,
        p_value: plain?.pValue ?? null,
        statistic_cc: corrected?.statistic ?? null,
        p_value_cc: corrected?.pValue ?? null,
      },
      breslow_day: {
        statistic: homogeneity?.statistic ?? null,
        df: homogeneity?.degreesOfFreedom ?? null,
        p_value: homogeneity?.pValue ?? null,
        tarone_statistic: tarone?.statistic ?? null,
        tarone_p_value: tarone?.pValue ?? null,
      },
    };
  },
};
