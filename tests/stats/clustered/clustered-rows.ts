import fc from 'fast-check';

export type ClusterRow = { events: number; trials: number; cluster: string };

/** Rows of units in at most five clusters, with nothing, everything and empty rows among them. */
export const clusterRows = fc
  .array(
    fc
      .record({
        trials: fc.integer({ min: 0, max: 40 }),
        share: fc.constantFrom(0, 0.05, 0.2, 0.5, 1),
        cluster: fc.constantFrom('Alder', 'Birch', 'Cedar', 'Dogwood', 'Elm'),
      })
      .map(({ trials, share, cluster }) => ({ events: Math.round(trials * share), trials, cluster })),
    { minLength: 1, maxLength: 14 },
  )
  .map((rows): ClusterRow[] => rows);

export function columns(rows: readonly ClusterRow[]) {
  return {
    events: rows.map(({ events }) => events),
    trials: rows.map(({ trials }) => trials),
    cluster: rows.map(({ cluster }) => cluster),
    level: 0.95,
  };
}

/** Reversed, with every row split into two where it can be, and the clusters given other names. */
export function rearranged(rows: readonly ClusterRow[]): ClusterRow[] {
  return rows.toReversed().flatMap(({ events, trials, cluster }) => {
    const name = `the ${cluster} run`;
    const [some, few] = [Math.floor(trials / 2), Math.min(Math.floor(events / 2), Math.floor(trials / 2))];
    const rest = { events: events - few, trials: trials - some };
    if (rest.events > rest.trials) return [{ events, trials, cluster: name }];
    return [
      { events: few, trials: some, cluster: name },
      { ...rest, cluster: name },
    ];
  });
}

/** Weil's rats (1970): litters and how many of each were alive at weaning; as tabled by Rao & Scott (1992). */
export const weilControl = {
  events: [13, 12, 9, 9, 8, 8, 12, 11, 9, 9, 8, 11, 4, 5, 7, 7],
  trials: [13, 12, 9, 9, 8, 8, 13, 12, 10, 10, 9, 13, 5, 7, 10, 10],
};
export const weilTreated = {
  events: [12, 11, 10, 9, 10, 9, 9, 8, 8, 4, 7, 4, 5, 3, 3, 0],
  trials: [12, 11, 10, 9, 11, 10, 10, 9, 9, 5, 9, 7, 10, 6, 10, 7],
};
