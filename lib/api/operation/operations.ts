import { closeBatch } from '@/lib/records/batch/close-batch.command';
import { closeBatchInput } from '@/lib/records/batch/close-batch.input';
import { correctBatch } from '@/lib/records/batch/correct-batch.command';
import { correctBatchInput } from '@/lib/records/batch/correct-batch.input';
import { reopenBatch } from '@/lib/records/batch/reopen-batch.command';
import { reopenBatchInput } from '@/lib/records/batch/reopen-batch.input';
import { startBatch } from '@/lib/records/batch/start-batch.command';
import { startBatchInput } from '@/lib/records/batch/start-batch.input';
import { correctCheckInput, recordCheckInput } from '@/lib/records/check/check.input';
import { correctCheck } from '@/lib/records/check/correct-check.command';
import { recordCheck } from '@/lib/records/check/record-check.command';
import { addPlace } from '@/lib/records/condition/add-place.command';
import { addPlaceInput } from '@/lib/records/condition/condition.input';
import { correctFinding } from '@/lib/records/finding/correct-finding.command';
import { correctFindingInput, recordFindingInput } from '@/lib/records/finding/finding.input';
import { recordFinding } from '@/lib/records/finding/record-finding.command';
import { correctLook } from '@/lib/records/look/correct-look.command';
import { correctLookInput } from '@/lib/records/look/correct-look.input';
import { recordLook } from '@/lib/records/look/record-look.command';
import { recordLookInput } from '@/lib/records/look/record-look.input';
import { correctLoss } from '@/lib/records/loss/correct-loss.command';
import { correctLossInput, recordLossInput } from '@/lib/records/loss/loss.input';
import { recordLoss } from '@/lib/records/loss/record-loss.command';
import { correctSecondLife } from '@/lib/records/second-life/correct-second-life.command';
import { correctSecondLifeInput, startSecondLifeInput } from '@/lib/records/second-life/second-life.input';
import { startSecondLife } from '@/lib/records/second-life/start-second-life.command';
import { addReading } from '@/lib/records/treatment/add-reading.command';
import { correctTreatment } from '@/lib/records/treatment/correct-treatment.command';
import { endTreatment } from '@/lib/records/treatment/end-treatment.command';
import { startTreatment } from '@/lib/records/treatment/start-treatment.command';
import {
  addReadingInput,
  correctTreatmentInput,
  endTreatmentInput,
  startTreatmentInput,
} from '@/lib/records/treatment/treatment.input';
import { correctWeighing } from '@/lib/records/weighing/correct-weighing.command';
import { recordWeighing } from '@/lib/records/weighing/record-weighing.command';
import { correctWeighingInput, recordWeighingInput } from '@/lib/records/weighing/weighing.input';
import { checks, findings, looks, losses } from '../resource/batch-events';
import { batches } from '../resource/batches';
import { conditions, places } from '../resource/conditions';
import { materials, methods, sites, species } from '../resource/network';
import { secondLives } from '../resource/second-lives';
import { readings, treatments } from '../resource/treatments';
import { weighings } from '../resource/weighings';
import { createConditions } from './condition-operation';
import { figureOperations } from './figure-operations';
import type { Operation } from './operation';
import { readOperations } from './read-operations';
import { stockOperations } from './stock-operations';
import { correct, create, step, voiding } from './write-operations';

const close = { verb: 'close', summary: 'Close a batch', idName: 'batchId', ifMatch: false };
const reopen = { verb: 'reopen', summary: 'Reopen a batch', idName: 'id', ifMatch: true };
const end = { verb: 'end', summary: 'End a treatment run', idName: 'id', ifMatch: true };

/** Everything that the API does; the document, the pages about it and the tests are made from this list. */
export const operations: readonly Operation[] = [
  ...readOperations(sites, 'sites'),
  ...readOperations(species, 'settings'),
  ...readOperations(materials, 'settings'),
  ...readOperations(methods, 'settings'),
  ...stockOperations,
  ...readOperations(treatments, 'treatments'),
  create(treatments, 'treatments', startTreatmentInput, startTreatment),
  correct(treatments, 'treatments', correctTreatmentInput, correctTreatment),
  step(treatments, 'treatments', end, endTreatmentInput, endTreatment),
  voiding(treatments, 'treatment-run'),
  ...readOperations(readings, 'treatments'),
  create(readings, 'treatments', addReadingInput, addReading),
  voiding(readings, 'treatment-reading'),
  ...readOperations(batches, 'batches'),
  create(batches, 'batches', startBatchInput, startBatch),
  correct(batches, 'batches', correctBatchInput, correctBatch),
  step(batches, 'batches', close, closeBatchInput, closeBatch),
  step(batches, 'batches', reopen, reopenBatchInput, reopenBatch),
  voiding(batches, 'batch'),
  ...readOperations(secondLives, 'batches'),
  create(secondLives, 'batches', startSecondLifeInput, startSecondLife),
  correct(secondLives, 'batches', correctSecondLifeInput, correctSecondLife),
  ...readOperations(looks, 'findings'),
  create(looks, 'findings', recordLookInput, recordLook),
  correct(looks, 'findings', correctLookInput, correctLook),
  voiding(looks, 'look'),
  ...readOperations(findings, 'findings'),
  create(findings, 'findings', recordFindingInput, recordFinding),
  correct(findings, 'findings', correctFindingInput, correctFinding),
  voiding(findings, 'finding'),
  ...readOperations(losses, 'findings'),
  create(losses, 'findings', recordLossInput, recordLoss),
  correct(losses, 'findings', correctLossInput, correctLoss),
  voiding(losses, 'loss'),
  ...readOperations(checks, 'findings'),
  create(checks, 'findings', recordCheckInput, recordCheck),
  correct(checks, 'findings', correctCheckInput, correctCheck),
  voiding(checks, 'check'),
  ...readOperations(weighings, 'weighings'),
  create(weighings, 'weighings', recordWeighingInput, recordWeighing),
  correct(weighings, 'weighings', correctWeighingInput, correctWeighing),
  voiding(weighings, 'weighing'),
  ...readOperations(places, 'conditions'),
  create(places, 'conditions', addPlaceInput, addPlace),
  voiding(places, 'condition-place'),
  ...readOperations(conditions, 'conditions'),
  createConditions,
  voiding(conditions, 'condition-reading'),
  ...figureOperations,
];
