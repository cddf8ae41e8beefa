import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { BatchFacts, SiteDates } from '../comparison/batch-facts';
import type { BatchNotes } from './batch-faults';
import { type ExpectedHarvests, maybeQuiet, quietFrom } from './quiet-from';
import { readLastEntries } from './read-last-entries';

type Encoded = readonly [id: string, code: string, spawnKnown: boolean];

/**
 * What the list of faults needs of the batches of a period besides their facts, by id; voided ones are not among them.
 * What was written last is looked for only of those whose last look or finding, which is kept, is old enough for silence.
 */
export async function readBatchNotes(
  context: ReadContext,
  { from, to }: { readonly from: string; readonly to: string },
  batches: readonly BatchFacts[],
  today: SiteDates,
): Promise<ReadonlyMap<string, BatchNotes>> {
  const { db, actor } = context;
  const network = actor.networkId;
  const [answer] = await db.$queryRaw<{ rows: string | null }[]>`
    select json_agg(json_build_array(id, code, exists (
      select from spawn_share where network_id = ${network}::uuid and batch_id = batch.id and voided_at is null)))::text as rows
    from batch
    where network_id = ${network}::uuid and voided_at is null and inoculated_on between ${from}::date and ${to}::date`;
  // The shape is the statement's own.
  const known = new Map(
    (JSON.parse(answer?.rows ?? '[]') as Encoded[]).map(([id, code, spawnKnown]) => [
      id,
      { code, spawnKnown },
    ]),
  );
  const maybe = maybeQuiet(batches, today);
  const entries = await readLastEntries(
    context,
    maybe.map(({ id }) => id),
  );
  const expected = await readExpected(context);
  const oysters = await readOysters(context);
  return new Map(
    batches.flatMap((facts) => {
      const { id, siteId, speciesId, containerKind } = facts;
      const own = known.get(id);
      if (own === undefined) return [];
      const [last, siteToday] = [entries.get(id), today.get(siteId)];
      const quiet =
        last === undefined || siteToday === undefined
          ? null
          : quietFrom(facts, last, expected.get(`${speciesId} ${containerKind}`), siteToday);
      return [[id, { ...own, isOyster: oysters.has(speciesId), quietFrom: quiet }]];
    }),
  );
}

/** When the network expects harvests, by species and container. */
async function readExpected({ db }: ReadContext): Promise<ReadonlyMap<string, ExpectedHarvests>> {
  const windows = await db.assessmentWindow.findMany({ where: { voidedAt: null } });
  const range = (from: number | null, to: number | null) =>
    from === null || to === null ? null : { from, to };
  return new Map(
    windows.map((days) => [
      `${days.speciesId} ${days.containerKind}`,
      {
        firstHarvest: range(days.firstHarvestFromDays, days.firstHarvestToDays),
        betweenFlushes: range(days.betweenFlushesFromDays, days.betweenFlushesToDays),
      },
    ]),
  );
}

async function readOysters({ db }: ReadContext): Promise<ReadonlySet<string>> {
  const species = await db.species.findMany({ select: { id: true, scientificName: true } });
  return new Set(
    species.flatMap(({ id, scientificName }) =>
      scientificName.toLowerCase().startsWith('pleurotus ') ? [id] : [],
    ),
  );
}
