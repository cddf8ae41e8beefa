import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type {
  AssessmentWindow,
  Material,
  MaterialMoisture,
  Method,
  Site,
  SpawnLot,
  Species,
  SubstrateLot,
  Suitability,
  TreatmentRun,
} from '@/lib/database/generated/client';
import type { BatchInput } from './batch-fields.input';

/** Everything that a batch points to, as far as the actor may see it and it is not voided. */
export type BatchLookups = {
  readonly site: Site | null;
  readonly species: Species | null;
  readonly window: AssessmentWindow | null;
  readonly lots: ReadonlyMap<string, SubstrateLot & { material: Material }>;
  readonly runs: ReadonlyMap<string, TreatmentRun>;
  readonly methods: ReadonlyMap<string, Method>;
  readonly spawnLots: ReadonlyMap<string, SpawnLot>;
  readonly drained: readonly MaterialMoisture[];
  /** What the network says about the species, and about materials with methods. */
  readonly suitability: readonly Suitability[];
  /** Whether the person named as having started the batch is known at the site. */
  readonly starterKnown: boolean;
};

function byId<T extends { id: string }>(rows: readonly T[]): ReadonlyMap<string, T> {
  return new Map(rows.map((row) => [row.id, row]));
}

const live = { voidedAt: null };

/** `site person` of those named as having started one of the batches who are known there. */
async function knownStarters(
  { db, actor }: ReadContext,
  inputs: readonly BatchInput[],
): Promise<ReadonlySet<string>> {
  const known = new Set<string>();
  const asked = new Map(inputs.map((input) => [`${input.siteId} ${input.startedById}`, input]));
  for (const [key, { siteId, startedById }] of asked) {
    if (startedById === null || startedById === actor.personId) continue;
    const names = await db.$queryRaw<{ name: string | null }[]>`
      select person_name as name from app.site_colleagues(${siteId}::uuid)
      where person_id = ${startedById}::uuid`;
    if (names.length > 0) known.add(key);
  }
  return known;
}

/**
 * Looks up what batches point to, each thing once for all of them; answers what is there for one of them. What is
 * missing stays missing, for the checks to name.
 */
export async function batchLookups(
  context: ReadContext,
  inputs: readonly BatchInput[],
): Promise<{
  readonly found: (input: BatchInput) => BatchLookups;
  readonly all: Pick<BatchLookups, 'runs' | 'methods'>;
}> {
  const { db, actor } = context;
  const some = (ids: readonly string[]) => ({ in: [...new Set(ids)] });
  const components = inputs.flatMap((input) => input.components);
  const chosen = (kind: 'run' | 'method') =>
    components.flatMap(({ treatment }) => (treatment.kind === kind ? [treatment.id] : []));
  const lots = await db.substrateLot.findMany({
    where: { id: some(components.map(({ lotId }) => lotId)), ...live },
    include: { material: true },
  });
  const runs = await db.treatmentRun.findMany({ where: { id: some(chosen('run')), ...live } });
  const methodIds = [...chosen('method'), ...runs.map(({ methodId }) => methodId)];
  const speciesId = some(inputs.map((input) => input.speciesId));
  const spawnIds = inputs.flatMap(({ spawn }) => spawn.map(({ lotId }) => lotId));
  const sites = byId(
    await db.site.findMany({ where: { id: some(inputs.map(({ siteId }) => siteId)), ...live } }),
  );
  const species = byId(await db.species.findMany({ where: { id: speciesId, ...live } }));
  const windows = await db.assessmentWindow.findMany({ where: { speciesId, ...live } });
  const all = {
    lots: byId(lots),
    runs: byId(runs),
    methods: byId(await db.method.findMany({ where: { id: some(methodIds), ...live } })),
    spawnLots: byId(await db.spawnLot.findMany({ where: { id: some(spawnIds), ...live } })),
    drained: await db.materialMoisture.findMany({
      where: {
        materialId: some(lots.map(({ materialId }) => materialId)),
        methodId: some(methodIds),
        ...live,
      },
    }),
  };
  const suitability = await db.suitability.findMany({
    where: { OR: [{ speciesId }, { speciesId: null }], ...live },
  });
  const starters = await knownStarters(context, inputs);
  const found = (input: BatchInput): BatchLookups => ({
    ...all,
    site: sites.get(input.siteId) ?? null,
    species: species.get(input.speciesId) ?? null,
    window:
      windows.find((one) => one.speciesId === input.speciesId && one.containerKind === input.containerKind) ??
      null,
    suitability: suitability.filter((one) => one.speciesId === null || one.speciesId === input.speciesId),
    starterKnown:
      input.startedById === null ||
      input.startedById === actor.personId ||
      starters.has(`${input.siteId} ${input.startedById}`),
  });
  return { found, all };
}
