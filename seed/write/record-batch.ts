import { usualBedLayers } from '@/lib/growing/bed-layers';
import { closeBatch } from '@/lib/records/batch/close-batch.command';
import { closeBatchInput } from '@/lib/records/batch/close-batch.input';
import { startBatch } from '@/lib/records/batch/start-batch.command';
import { startBatchInput } from '@/lib/records/batch/start-batch.input';
import { recordCheckInput } from '@/lib/records/check/check.input';
import { recordCheck } from '@/lib/records/check/record-check.command';
import { recordFindingInput } from '@/lib/records/finding/finding.input';
import { recordFinding } from '@/lib/records/finding/record-finding.command';
import { recordLook } from '@/lib/records/look/record-look.command';
import { recordLookInput } from '@/lib/records/look/record-look.input';
import { recordLossInput } from '@/lib/records/loss/loss.input';
import { recordLoss } from '@/lib/records/loss/record-loss.command';
import { recordWeighing } from '@/lib/records/weighing/record-weighing.command';
import { recordWeighingInput } from '@/lib/records/weighing/weighing.input';
import type { PlannedBatch, PlannedWeighing } from '../plan/story-plan';
import type { LotBook } from './add-lots';
import type { Take } from './in-one-go';

const whiteOakFiaCode = 802;

const bedLayers = usualBedLayers().map(({ material, thicknessMm }) => ({
  material,
  ...(thicknessMm === null ? {} : { thickness: Math.round(thicknessMm) }),
}));

/** Every third flush of the logs is forced by soaking; the rest come by themselves. */
function forced({ container }: PlannedBatch, { flush }: PlannedWeighing) {
  return container === 'log' ? { forcedFlush: flush % 3 === 0 ? 'yes' : 'no' } : {};
}

function idBy<T extends { id: string }>(rows: readonly T[], matches: (row: T) => boolean): string {
  const row = rows.find(matches);
  if (!row) throw new Error('the network lacks a default that the story needs');
  return row.id;
}

/** Where a harvest of the story goes: mostly sold, some given and kept. */
function destinations({ grams }: PlannedWeighing) {
  const sold = Math.round(grams * 0.6);
  const given = Math.round(grams * 0.2);
  return { sold, given, kept: grams - sold - given };
}

/** Records a planned batch and everything that happened to it, in the order of the days. */
export async function recordBatch(
  take: Take,
  book: LotBook,
  batch: PlannedBatch,
  siteId: string,
  runId: string | null,
  goesOn: boolean,
): Promise<string> {
  const { choices } = book;
  const methodId = idBy(choices.methods, (method) => method.kind === batch.method);
  const lots = book.substrateByMaterial.get(batch.materialCode) ?? [];
  const lot = lots.filter((one) => one.receivedOn <= batch.inoculatedOn).at(-1) ?? lots[0];
  const started = await take(startBatchInput, startBatch, {
    siteId,
    speciesId: idBy(choices.species, (species) => species.code === batch.speciesCode),
    containerKind: batch.container,
    unitCount: batch.unitCount,
    inoculatedOn: batch.inoculatedOn,
    components: [
      {
        lotId: lot?.id,
        treatment: runId === null ? `method:${methodId}` : `run:${runId}`,
        role: 'substrate',
        massStage: 'filled',
        mass: batch.wetGrams,
      },
    ],
    spawn: [{ lotId: book.spawnByCode.get(batch.spawnLotCode), mass: batch.spawnGrams }],
    filledMass: batch.wetGrams,
    moistureSource: batch.moistureSource,
    moisturePercent: batch.moisturePercent,
    bedArea: batch.bedAreaCm2,
    layers: batch.container === 'bed' ? bedLayers : [],
    ...(batch.container === 'log' ? { logWoodCode: whiteOakFiaCode, logDiameter: 127, logLength: 1016 } : {}),
  });
  const batchId = started.id;
  for (const lookedOn of batch.looks) await take(recordLookInput, recordLook, { batchId, lookedOn });
  for (const finding of batch.findings) {
    await take(recordFindingInput, recordFinding, {
      batchId,
      foundOn: finding.date,
      units: finding.units,
      sign: finding.sign,
      stage: finding.cropping ? 'cropping' : 'colonising',
      action:
        finding.cropping || batch.container === 'bed' || batch.container === 'log'
          ? 'left_in_place'
          : 'discarded',
    });
  }
  if (batch.lost) {
    await take(recordLossInput, recordLoss, {
      batchId,
      lostOn: batch.lost.date,
      units: batch.lost.units,
      cause: 'dried_out',
    });
  }
  if (batch.colonisedOn) {
    await take(recordCheckInput, recordCheck, {
      batchId,
      checkedOn: batch.colonisedOn,
      kind: 'fully_colonised',
    });
  }
  for (const weighing of batch.weighings) {
    await take(recordWeighingInput, recordWeighing, {
      weighedOn: weighing.date,
      fresh: weighing.grams,
      lines: [{ batchId, flush: weighing.flush, ...forced(batch, weighing) }],
      ...destinations(weighing),
    });
  }
  if (batch.closedOn) {
    await take(closeBatchInput, closeBatch, {
      batchId,
      closedOn: batch.closedOn,
      closeReason: 'finished',
      spentDestination: goesOn ? 'second_life' : 'composted',
      noHarvest: batch.weighings.length > 0 ? '' : batch.notWeighed ? 'not_weighed' : 'none_picked',
    });
  }
  return batchId;
}
