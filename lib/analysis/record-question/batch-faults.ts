import { questionBe } from '@/lib/growing/yield-plausibility';
import type { JudgedBatch } from '../comparison/judged-batch';
import type { FaultKind, RecordFault } from './record-fault';

/** What is known of a batch besides the facts that figures rest on. */
export type BatchNotes = {
  readonly code: string;
  readonly isOyster: boolean;
  readonly spawnKnown: boolean;
  /** The day from which an open batch is quiet: nothing was written for long and nothing more is expected. */
  readonly quietFrom: string | null;
};

/**
 * What is missing of a batch, or hard to believe, that its figures could use. The reasons for which a figure leaves a batch
 * out come from the very rules that leave it out, so that the list and the figures cannot disagree.
 */
export function batchFaults(batch: JudgedBatch, notes: BatchNotes): RecordFault[] {
  const { facts, contamination, yield: given } = batch;
  if (facts.voided) return [];
  const faults: RecordFault[] = [];
  const add = (kind: FaultKind, on: string) =>
    faults.push({ kind, siteId: facts.siteId, of: 'batch', id: facts.id, code: notes.code, on });
  const { inoculatedOn, contaminationAssessedOn, yieldAssessedOn } = facts;
  if (contamination.kind === 'left-out' && contamination.reason === 'not-inspected')
    add('not-inspected', contaminationAssessedOn ?? inoculatedOn);
  if (contaminationAssessedOn === null) add('no-window', inoculatedOn);
  if (given.kind === 'left-out') {
    if (given.reason === 'not-weighed') add('not-weighed', facts.closedOn ?? yieldAssessedOn ?? inoculatedOn);
    if (given.reason === 'harvest-unknown') add('harvest-unknown', yieldAssessedOn ?? inoculatedOn);
  }
  const dry = facts.dryGrams !== null && facts.dryGrams > 0;
  // Logs and second lives are weighed against other sums, and often cannot be weighed at all.
  const divided = facts.containerKind !== 'log' && !facts.secondLife;
  if (divided && facts.containerKind === 'bed') {
    if (facts.bedAreaCm2 === null || facts.bedAreaCm2 <= 0) add('no-area', inoculatedOn);
  } else if (divided && !dry) add('no-dry-mass', inoculatedOn);
  if (divided && dry && facts.dryAssumed && facts.containerKind !== 'bed')
    add('assumed-moisture', inoculatedOn);
  if (facts.runMissing) add('run-missing', inoculatedOn);
  if (!notes.spawnKnown && !facts.secondLife) add('no-spawn-lot', inoculatedOn);
  if (notes.quietFrom !== null) add('quiet', notes.quietFrom);
  const doubt = yieldDoubt(batch, notes.isOyster);
  if (doubt !== undefined) add(doubt, facts.closedOn ?? yieldAssessedOn ?? inoculatedOn);
  return faults;
}

function yieldDoubt({ facts }: JudgedBatch, isOyster: boolean): FaultKind | undefined {
  const { dryGrams, containerKind, closedOn, closedAsLost, noHarvest, weighings, secondLife } = facts;
  if (dryGrams === null || dryGrams <= 0 || containerKind === 'bed' || weighings === 0 || secondLife)
    return undefined;
  const question = questionBe((100 * (facts.freshGramsByYieldDay + facts.freshGramsLater)) / dryGrams, {
    container: containerKind,
    isOyster,
    finished: closedOn !== null,
    recordedAsLost: closedAsLost || noHarvest !== null || facts.contaminatedAtAnyTime > 0,
  });
  if (question === null) return undefined;
  return question.code === 'be-low' ? 'yield-low' : 'yield-high';
}
