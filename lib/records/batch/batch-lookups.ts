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

/** Looks up what a batch points to; what is missing stays missing, for the checks to name. */
export async function batchLookups(context: ReadContext, input: BatchInput): Promise<BatchLookups> {
  const { db, actor } = context;
  const live = { voidedAt: null };
  const { components, spawn, containerKind, speciesId } = input;
  const chosen = (kind: 'run' | 'method') =>
    components.flatMap(({ treatment }) => (treatment.kind === kind ? [treatment.id] : []));
  const lots = await db.substrateLot.findMany({
    where: { id: { in: components.map(({ lotId }) => lotId) }, ...live },
    include: { material: true },
  });
  const runs = await db.treatmentRun.findMany({ where: { id: { in: chosen('run') }, ...live } });
  const methodIds = [...chosen('method'), ...runs.map(({ methodId }) => methodId)];
  const names =
    input.startedById === null || input.startedById === actor.personId
      ? [{ name: actor.name }]
      : await db.$queryRaw<{ name: string | null }[]>`
          select person_name as name from app.site_colleagues(${input.siteId}::uuid)
          where person_id = ${input.startedById}::uuid`;
  return {
    site: await db.site.findFirst({ where: { id: input.siteId, ...live } }),
    species: await db.species.findFirst({ where: { id: speciesId, ...live } }),
    window: await db.assessmentWindow.findFirst({ where: { speciesId, containerKind, ...live } }),
    lots: byId(lots),
    runs: byId(runs),
    methods: byId(await db.method.findMany({ where: { id: { in: methodIds }, ...live } })),
    spawnLots: byId(
      await db.spawnLot.findMany({ where: { id: { in: spawn.map(({ lotId }) => lotId) }, ...live } }),
    ),
    drained: await db.materialMoisture.findMany({
      where: {
        materialId: { in: lots.map(({ materialId }) => materialId) },
        methodId: { in: methodIds },
        ...live,
      },
    }),
    suitability: await db.suitability.findMany({
      where: { OR: [{ speciesId }, { speciesId: null }], ...live },
    }),
    starterKnown: names.length > 0,
  };
}
