import 'server-only';
import type { WriteContext } from '@/lib/access/context';
import type { ReadyBatch } from '@/lib/records/batch/insert-started';
import { asCalendarDate, asDate } from '@/lib/records/fields/stored-date';
import { type FoundBatch, foundBatches } from '@/lib/records/finding/found-batches';
import { type WeighedBatch, weighedBatches } from '@/lib/records/weighing/weighed-batches';
import type { NamedBatch } from './other-batch';

export type KnownBatch = NamedBatch & { readonly id: string };

/** What is known of the batches of some lines, by their ids; each line that is taken changes it. */
export type NotebookFacts = {
  readonly named: Map<string, KnownBatch>;
  /** As a harvest needs them: those that some line harvests. */
  readonly weighed: Map<string, WeighedBatch>;
  /** As a finding needs them: those that some line finds something in; held until the transaction ends. */
  readonly found: Map<string, FoundBatch>;
};

type Asked = { readonly all: Iterable<string>; readonly harvested: string[]; readonly found: string[] };

export async function readFacts(context: WriteContext, asked: Asked): Promise<NotebookFacts> {
  const rows = await context.db.batch.findMany({
    where: { id: { in: [...asked.all] } },
    select: { id: true, code: true, siteId: true, speciesId: true, inoculatedOn: true },
  });
  const { harvested, found } = asked;
  const weighed = harvested.length === 0 ? [] : await weighedBatches(context, harvested, undefined);
  return {
    named: new Map(rows.map((row) => [row.id, { ...row, inoculatedOn: asCalendarDate(row.inoculatedOn) }])),
    weighed: new Map(weighed.map((batch) => [batch.id, batch])),
    found: found.length === 0 ? new Map() : await foundBatches(context, found),
  };
}

export type BatchFacts = {
  readonly named: KnownBatch;
  readonly weighed: WeighedBatch | undefined;
  readonly found: FoundBatch | undefined;
};

/** What is known of a batch of which nothing is recorded yet but its start. */
export function startedFacts({ input, prepared }: ReadyBatch, named: KnownBatch): BatchFacts {
  const { id, code, siteId } = named;
  const common = { id, code, siteId, site: prepared.resolved.site };
  const units = input.unitCount;
  return {
    named,
    weighed: {
      ...{ ...common, inoculatedOn: input.inoculatedOn },
      ...{ containerKind: input.containerKind, unitCount: units, liveUnits: units },
      ...{ dryGrams: prepared.derived.dryGrams, earlierGrams: 0, earlier: [] },
    },
    found: {
      ...{ ...common, inoculatedOn: asDate(input.inoculatedOn), closedOn: null, recorded: new Set() },
      units: { inoculated: units, canBeFound: units, namedContaminated: new Set() },
    },
  };
}

export function keepFacts(facts: NotebookFacts, { named, weighed, found }: BatchFacts): void {
  facts.named.set(named.id, named);
  if (weighed) facts.weighed.set(named.id, weighed);
  if (found) facts.found.set(named.id, found);
}
