import type { ContaminationSign, Destination, LossCause } from '@/lib/database/generated/enums';
import type { TraceSide } from './trace-view';

/** What became of everything at one site, or at all; a second life counts as a batch of its own. */
export type Whereabouts = {
  readonly batches: number;
  /** Batches not closed yet, and the units standing in them. */
  readonly open: number;
  readonly live: number;
  readonly contaminated: number;
  readonly lostClean: number;
  /** Picked from these batches, whole grams. */
  readonly freshGrams: number;
};

export type WhereItWent = {
  readonly all: Whereabouts;
  readonly sites: readonly (Whereabouts & { readonly siteId: string; readonly siteName: string })[];
  readonly signs: ReadonlyMap<ContaminationSign, number>;
  readonly causes: ReadonlyMap<LossCause, number>;
  /** Whole grams picked of each batch, by its id. */
  readonly picked: ReadonlyMap<string, number>;
  /** Grams by destination, crates with other batches in them counted whole. */
  readonly destinations: ReadonlyMap<Destination, number>;
  /** Grams on the scale of which nobody wrote down where they went. */
  readonly notSaid: number;
  /** Spawn lots that were made on the way. */
  readonly lotsMade: number;
  /** Crates that batches of other origin were weighed in, too. */
  readonly mixedCrates: number;
};

/** Adds up what became of the batches of a trace, by site in the order of their names. */
export function whereItWent({
  batches,
  harvests,
  links,
}: Pick<TraceSide, 'batches' | 'harvests' | 'links'>): WhereItWent {
  const picked = new Map<string, number>();
  for (const { from, to, amount } of links)
    if (from.kind === 'batch' && to.kind === 'weighing') add(picked, from.id, amount ?? 0);
  const signs = new Map<ContaminationSign, number>();
  const causes = new Map<LossCause, number>();
  const destinations = new Map<Destination, number>();
  for (const batch of batches) {
    for (const [sign, units] of Object.entries(batch.signs)) add(signs, sign as ContaminationSign, units);
    for (const [cause, units] of Object.entries(batch.causes)) add(causes, cause as LossCause, units);
  }
  let notSaid = 0;
  for (const harvest of harvests) {
    for (const [destination, grams] of Object.entries(harvest.destinations))
      add(destinations, destination as Destination, grams);
    notSaid += harvest.notSaidGrams;
  }
  const sites = new Map(batches.map(({ siteId, siteName }) => [siteId, siteName]));
  const of = (some: TraceSide['batches']): Whereabouts => ({
    batches: some.length,
    open: some.filter(({ closedOn }) => closedOn === null).length,
    live: sum(some.map(({ live }) => live)),
    contaminated: sum(some.map(({ contaminated }) => contaminated)),
    lostClean: sum(some.map(({ lostClean }) => lostClean)),
    freshGrams: sum(some.map(({ id }) => picked.get(id) ?? 0)),
  });
  return {
    all: of(batches),
    sites: [...sites]
      .map(([siteId, siteName]) => ({
        siteId,
        siteName,
        ...of(batches.filter((batch) => batch.siteId === siteId)),
      }))
      .sort((a, b) => a.siteName.localeCompare(b.siteName)),
    ...{ signs, causes, picked, destinations, notSaid },
    lotsMade: new Set(links.flatMap(({ to }) => (to.kind === 'spawn-lot' ? [to.id] : []))).size,
    mixedCrates: harvests.filter(({ mixed }) => mixed).length,
  };
}

function add<Key>(sums: Map<Key, number>, key: Key, amount: number): void {
  sums.set(key, (sums.get(key) ?? 0) + amount);
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, number) => total + number, 0);
}
