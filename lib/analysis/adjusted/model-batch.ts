import type { Hemisphere } from '@/lib/growing/hemisphere';
import { seasonOf } from '@/lib/growing/season';
import type { JudgedBatch } from '../comparison/judged-batch';

/** The lots that most of a batch came from; null where none is recorded. */
export type BatchLots = { readonly spawn: string | null; readonly material: string | null };

/** One batch as the models take it. */
export type ModelBatch = {
  readonly id: string;
  readonly siteId: string;
  readonly methodKey: string;
  readonly speciesId: string;
  readonly materialId: string;
  /** Season of inoculation at the site: '1' winter (December to February in the north, June to August in the south). */
  readonly season: string;
  readonly inoculatedOn: string;
  /** The day from which its contamination is judged. */
  readonly assessedOn: string;
  readonly spawnLot: string;
  readonly materialLot: string;
  /** Label of the treatment run, or of the batch itself. */
  readonly run: string;
  readonly units: number;
  /** Units found contaminated by the window's end; null where the batch does not count (yet). */
  readonly contaminated: number | null;
  /** Biological efficiency in percent, 0 for a total loss; null where it does not count or is a bed's or a log's. */
  readonly bePercent: number | null;
};

/** Batches without a recorded lot are alike in nothing: each is a level of its own. */
const unknownLot = (id: string) => `unknown ${id}`;

/** Whether the spawn lot of a batch was recorded. */
export function isLotKnown({ id, spawnLot }: ModelBatch): boolean {
  return spawnLot !== unknownLot(id);
}

/** Whether the material lot of a batch was recorded. */
export function isMaterialKnown({ id, materialLot }: ModelBatch): boolean {
  return materialLot !== unknownLot(id);
}

/**
 * Judged batches with their lots, sorted by id, so that sums come out the same to the last digit in any order.
 *
 * @param halves the half of the earth of each site; one that is not among them counts as northern.
 */
export function modelBatches(
  judged: readonly JudgedBatch[],
  lots: ReadonlyMap<string, BatchLots>,
  halves: ReadonlyMap<string, Hemisphere> = new Map(),
): ModelBatch[] {
  return judged
    .filter(({ facts }) => !facts.voided)
    .map((batch): ModelBatch => {
      const { facts, contamination, yield: given } = batch;
      const own = lots.get(facts.id);
      const inGrams = facts.containerKind !== 'bed' && facts.containerKind !== 'log';
      return {
        id: facts.id,
        siteId: facts.siteId,
        methodKey: batch.methodKey,
        speciesId: facts.speciesId,
        materialId: facts.materialId ?? 'mixed',
        season: seasonOf(facts.inoculatedOn, halves.get(facts.siteId) ?? 'unknown'),
        inoculatedOn: facts.inoculatedOn,
        assessedOn: facts.contaminationAssessedOn ?? facts.inoculatedOn,
        spawnLot: own?.spawn ?? unknownLot(facts.id),
        materialLot: own?.material ?? unknownLot(facts.id),
        run: batch.runCluster,
        units: facts.unitCount,
        contaminated: contamination.kind === 'counted' ? contamination.byWindowEnd : null,
        bePercent: given.kind === 'counted' && inGrams ? (100 * given.freshGrams) / given.over : null,
      };
    })
    .sort((a, b) => (a.id < b.id ? -1 : 1));
}
