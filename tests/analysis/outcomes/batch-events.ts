type Found = readonly [batchId: string, byWindowEnd: number | null, ever: number, lastOn: string];
type Lost = readonly [batchId: string, clean: number];
type Looked = readonly [batchId: string, lastOn: string];
type Weighed = readonly [
  batchId: string,
  gramsByYieldDay: number | null,
  grams: number,
  times: number,
  trimmed: boolean | null,
  asPicked: boolean | null,
  shared: boolean | null,
];
type Treated = readonly [batchId: string, runs: string | null, runMissing: boolean];

/** What happened to batches, by batch id; a batch to which nothing of a kind happened is not in that map. */
export type BatchEvents = {
  readonly found: ReadonlyMap<string, Found>;
  readonly lost: ReadonlyMap<string, Lost>;
  readonly looked: ReadonlyMap<string, Looked>;
  readonly weighed: ReadonlyMap<string, Weighed>;
  readonly treated: ReadonlyMap<string, Treated>;
};

/** The same as JSON texts of the database, in the order of the statement in `read-batch-events.ts`. */
export type EventLists = { readonly [list in keyof BatchEvents]: string | null };

function byBatch<T extends readonly [string, ...unknown[]]>(text: string | null | undefined): Map<string, T> {
  const rows = text ? (JSON.parse(text) as T[]) : [];
  return new Map(rows.map((row) => [row[0], row]));
}

export function eventsOf(lists: EventLists | undefined): BatchEvents {
  return {
    found: byBatch<Found>(lists?.found),
    lost: byBatch<Lost>(lists?.lost),
    looked: byBatch<Looked>(lists?.looked),
    weighed: byBatch<Weighed>(lists?.weighed),
    treated: byBatch<Treated>(lists?.treated),
  };
}
