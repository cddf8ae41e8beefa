import { elementAt } from '../element-at';
import type { LifeTable } from './life-table';

/** Per row of the whole life table: what one group of units contributed to it. */
export type GroupCounts = {
  readonly atRisk: readonly number[];
  readonly events: readonly (readonly number[])[];
};

/**
 * How the cumulative incidence of every cause at every time changes with the weight of a group of units (its
 * infinitesimal jackknife): answer[row][cause].
 *
 * With h_k = d_k / Y, F_k(t) = sum S(s-) h_k(s). A group with r at risk and e_k events at s changes h_k by
 * (e_k - r h_k) / Y, and log S(s-) by minus the sum of (e - r h) / (Y (1 - h)) before s.
 *
 * Source: Therneau & Grambsch (Modeling Survival Data, 2000, ch. 7), and for competing risks the multi-state
 * extension in the survival package's vignettes; derived here, checked against both variances of the reference.
 */
export function incidenceInfluence(table: LifeTable, group: GroupCounts): number[][] {
  const influence = table.causes.map(() => 0);
  let survival = 1;
  let logSurvivalChange = 0;
  return table.rows.map((row, index) => {
    const atRisk = elementAt(group.atRisk, index);
    const events = elementAt(group.events, index);
    let allEvents = 0;
    row.events.forEach((count, cause) => {
      const own = elementAt(events, cause);
      allEvents += own;
      const hazard = count / row.atRisk;
      const change = (own - atRisk * hazard) / row.atRisk;
      influence[cause] = elementAt(influence, cause) + survival * (change + logSurvivalChange * hazard);
    });
    const hazard = row.allEvents / row.atRisk;
    if (hazard < 1) logSurvivalChange -= (allEvents - atRisk * hazard) / row.atRisk / (1 - hazard);
    survival *= (row.atRisk - row.allEvents) / row.atRisk;
    return [...influence];
  });
}
