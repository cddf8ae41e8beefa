import { unit } from '../../../lib/stats/mixed/coefficients';
import { workingContrast } from '../../../lib/stats/mixed/design/coefficient-map';
import { linearMeansSource } from '../../../lib/stats/mixed/linear/linear-means';
import { satterthwaite } from '../../../lib/stats/mixed/linear/satterthwaite';
import { meansAndPairs } from '../mixed/means-answer';
import { named, requireAnswers } from '../mixed/mixed-case';
import { crudeContamination, efficiencyRatios } from '../mixed/network-crude';
import { type NetworkBatch, readNetwork } from '../mixed/network-data';
import { contaminationModel, efficiencyModel } from '../mixed/network-models';
import { againstFirst } from '../mixed/network-stratified';
import { discardLogRank, incidencesAt } from '../mixed/network-survival';
import { type ReferenceHandler, statedTolerance, type Tolerance } from '../reference-handler';

const DAYS = [20, 30, 40, 50, 60];

function tally(batches: readonly NetworkBatch[], key: 'status' | 'firstEvent') {
  const values = [...new Set(batches.map((own) => own[key]))].sort();
  return named(
    values,
    (value) => value,
    (value) => batches.filter((own) => own[key] === value).length,
  );
}

export const handler: ReferenceHandler = {
  method: '15 simulated network',

  run(input, context) {
    const { all, closed, harvested, methods, sites } = readNetwork(input);
    const positive = harvested.filter(({ freshKg }) => freshKg > 0);
    const log = efficiencyModel(positive, 'logbe');
    const ratios = efficiencyRatios(harvested, context);
    const degreesOf = satterthwaite(log.fit);
    return requireAnswers(
      context.expected,
      {
        counts: {
          batches: all.length,
          status: tally(all, 'status'),
          first_event: tally(all, 'firstEvent'),
          site_by_method_batches: {
            sites,
            methods,
            n: sites.map((site) =>
              methods.map((method) => all.filter((own) => own.site === site && own.method === method).length),
            ),
          },
        },
        contamination_crude: named(
          methods,
          (method) => method,
          (method) => crudeContamination(closed.filter((own) => own.method === method)),
        ),
        contamination_mh_vs_A: againstFirst(closed, methods, sites, context),
        contamination_glmm_site_lot: contaminationModel(closed, '(1 | site) + (1 | lot)'),
        contamination_glmm_site_lot_batch: contaminationModel(closed, '(1 | site) + (1 | lot) + (1 | obs)'),
        be_counts: { harvested_closed: harvested.length, fresh_positive: positive.length },
        be_ratio_by_method_site_clusters: ratios.byMethod,
        be_ratio_overall_site_clusters: ratios.overall,
        be_lmm_percent: efficiencyModel(harvested, 'be').answer,
        be_lmm_log: {
          ...log.answer,
          satterthwaite_df: named(
            log.fit.coefficients.map(({ name }, index) => ({ name, index })),
            ({ name }) => name,
            ({ index }) => {
              const c = workingContrast(log.fit.fixed.map, unit(log.fit.coefficients.length, index));
              return c ? degreesOf(c) : null;
            },
          ),
        },
        be_emmeans_log_asymptotic: meansAndPairs(linearMeansSource(log.fit, 'normal'), 'method'),
        competing_risks: named(
          methods,
          (method) => method,
          (method) =>
            incidencesAt(
              all.filter((own) => own.method === method),
              DAYS,
            ),
        ),
        logrank_discard: discardLogRank(all, false),
        logrank_discard_stratified_by_site: discardLogRank(all, true),
      },
      ['gray'],
    );
  },

  tolerance(path, file): Tolerance {
    const stated = (name: string) => statedTolerance(file, name);
    if (path.startsWith('contamination_glmm')) {
      if (/neg2loglik|aic/.test(path)) return { relative: stated('other_relative'), absolute: 0 };
      if (/\.(fixef|modes)\./.test(path)) return { relative: 0, absolute: stated('glmm_fixef_absolute') };
      if (/\.sd\./.test(path)) return { relative: stated('glmm_sd_relative'), absolute: 0 };
      // Squares of standard errors, and probabilities made from them.
      return { relative: 2 * stated('glmm_se_relative'), absolute: 0 };
    }
    if (path.startsWith('be_emmeans') && /\.p_|er_tukey/.test(path)) {
      return { relative: stated('lmm_relative'), absolute: 1e-6 };
    }
    if (/^be_(lmm|emmeans)/.test(path)) return { relative: stated('lmm_relative'), absolute: 1e-8 };
    if (/^(competing|logrank)/.test(path)) return { relative: stated('survival_relative'), absolute: 1e-12 };
    return { relative: stated('other_relative'), absolute: 1e-12 };
  },
};
