import { requireEventsOfTrials } from '../check-argument';
import { ArgumentError } from '../outcome';

/**
 * One stratum (a site, a season) of a comparison of two groups: `events1` events among `units1` units of group 1,
 * `events2` among `units2` of group 2. Effects are always group 1 against group 2. Either group may be empty.
 */
export type Stratum = {
  readonly label: string;
  readonly events1: number;
  readonly units1: number;
  readonly events2: number;
  readonly units2: number;
};

/** The 2 x 2 table of a stratum that holds at least one unit. */
export type Table = {
  /** Events and non-events of group 1. */
  readonly a: number;
  readonly b: number;
  /** Events and non-events of group 2. */
  readonly c: number;
  readonly d: number;
  readonly n1: number;
  readonly n2: number;
  readonly events: number;
  readonly nonEvents: number;
  readonly n: number;
  /** Both groups and both outcomes occur, so the stratum says something about an odds ratio. */
  readonly informative: boolean;
};

/**
 * Checks the strata and gives the tables of those that are not empty; an empty stratum adds nothing to any
 * Mantel-Haenszel sum and is not counted in any degrees of freedom.
 *
 * @throws ArgumentError for a label that occurs twice (add the rows of a stratum up first), counts that are no
 *   counts, or more events than units.
 */
export function occupiedTables(strata: readonly Stratum[]): Table[] {
  const labels = new Set<string>();
  const tables: Table[] = [];
  for (const { label, events1, units1, events2, units2 } of strata) {
    if (labels.has(label)) throw new ArgumentError('strata', `label "${label}" occurs twice`);
    labels.add(label);
    requireEventsOfTrials('events1', events1, 'units1', units1);
    requireEventsOfTrials('events2', events2, 'units2', units2);
    if (units1 + units2 === 0) continue;
    const events = events1 + events2;
    const nonEvents = units1 + units2 - events;
    tables.push({
      a: events1,
      b: units1 - events1,
      c: events2,
      d: units2 - events2,
      n1: units1,
      n2: units2,
      events,
      nonEvents,
      n: units1 + units2,
      informative: units1 > 0 && units2 > 0 && events > 0 && nonEvents > 0,
    });
  }
  return tables;
}

/** The sum over the tables of a term of each. */
export function sumTables(tables: readonly Table[], term: (table: Table) => number): number {
  return tables.reduce((sum, table) => sum + term(table), 0);
}
