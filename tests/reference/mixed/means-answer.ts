import { type MeansSource, marginalMeans } from '../../../lib/stats/mixed/means/marginal-means';
import { pairwiseDifferences } from '../../../lib/stats/mixed/means/pairwise-differences';
import { estimated } from './mixed-case';

/** Means and pairwise differences of one factor in the columns of the reference files. */
export function meansAndPairs(source: MeansSource, factor: string) {
  const means = marginalMeans(source, factor).map(estimated);
  const pairs = pairwiseDifferences(source, factor).map(estimated);
  return {
    means: {
      level: means.map(({ level }) => level),
      mean: means.map(({ estimate }) => estimate),
      se: means.map(({ standardError }) => standardError),
      df: means.map(({ degreesOfFreedom }) => degreesOfFreedom),
      lower: means.map(({ interval }) => interval.low),
      upper: means.map(({ interval }) => interval.high),
    },
    pairs: {
      contrast: pairs.map(({ first, second }) => `${first} - ${second}`),
      estimate: pairs.map(({ estimate }) => estimate),
      se: pairs.map(({ standardError }) => standardError),
      df: pairs.map(({ degreesOfFreedom }) => degreesOfFreedom),
      t: pairs.map(({ statistic }) => statistic),
      p_none: pairs.map(({ pValue }) => pValue),
      p_tukey: pairs.map(({ tukeyPValue }) => tukeyPValue),
      p_holm: pairs.map(({ holmPValue }) => holmPValue),
      p_bonferroni: pairs.map(({ bonferroniPValue }) => bonferroniPValue),
      lower_none: pairs.map(({ interval }) => interval.low),
      upper_none: pairs.map(({ interval }) => interval.high),
      lower_tukey: pairs.map(({ tukeyInterval }) => tukeyInterval.low),
      upper_tukey: pairs.map(({ tukeyInterval }) => tukeyInterval.high),
    },
  };
}
