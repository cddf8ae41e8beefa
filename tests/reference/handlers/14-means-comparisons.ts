import { fitLinearMixed } from '../../../lib/stats/mixed/linear/fit-linear';
import { linearMeansSource } from '../../../lib/stats/mixed/linear/linear-means';
import { meansAndPairs } from '../mixed/means-answer';
import { estimated, readMixedCase, requireAnswers } from '../mixed/mixed-case';
import { numbers } from '../mixed/model-formula';
import { type ReferenceHandler, statedTolerance, type Tolerance } from '../reference-handler';

export const handler: ReferenceHandler = {
  method: '14 adjusted method means and pairwise comparisons',

  run(input, { expected }) {
    const { formula, data, fixed, random, intercept } = readMixedCase(input);
    const fit = estimated(
      fitLinearMixed({ response: numbers(data, formula.response), fixed, random, intercept }),
    );
    const factor = formula.fixed[0]?.[0] ?? '';
    const exact = meansAndPairs(linearMeansSource(fit), factor);
    return requireAnswers(
      expected,
      random.length === 0
        ? { lm: exact }
        : { satterthwaite: exact, asymptotic: meansAndPairs(linearMeansSource(fit, 'normal'), factor) },
      ['kenward_roger'],
    );
  },

  tolerance(path, file): Tolerance {
    const stated = (name: string) => statedTolerance(file, name);
    if (/\.p_/.test(path)) return { relative: 0, absolute: stated('p_absolute') };
    if (/er_tukey/.test(path)) return { relative: stated('tukey_interval_relative'), absolute: 0 };
    if (/\.df/.test(path)) return { relative: stated('df_relative'), absolute: 0 };
    if (/\.(mean|estimate)\./.test(path)) return { relative: stated('mean_relative'), absolute: 1e-10 };
    return { relative: stated('se_relative'), absolute: 1e-10 };
  },
};
