import { elementAt } from '../element-at';
import type { FollowUp } from './follow-up';
import { groupCounts } from './group-counts';
import { incidenceInfluence } from './incidence-influence';
import type { LifeTable } from './life-table';

/**
 * Variance of the cumulative incidence when all units are independent: variances[row][cause], the infinitesimal
 * jackknife of every unit squared and summed. It equals the delta-method (Greenwood-type) variance.
 *
 * Units that ended at the same time in the same way have the same influence, so each such kind is worked out once.
 */
export function independentIncidenceVariance(table: LifeTable): number[][] {
  const variances = table.rows.map(() => table.causes.map(() => 0));
  const add = (followUp: FollowUp, units: number) => {
    if (units === 0) return;
    incidenceInfluence(table, groupCounts(table, [followUp])).forEach((values, row) => {
      const sums = elementAt(variances, row);
      values.forEach((value, cause) => {
        sums[cause] = elementAt(sums, cause) + units * value * value;
      });
    });
  };
  for (const { time, events, censored } of table.rows) {
    add({ time, cause: null }, censored);
    events.forEach((count, index) => {
      add({ time, cause: elementAt(table.causes, index) }, count);
    });
  }
  return variances;
}
