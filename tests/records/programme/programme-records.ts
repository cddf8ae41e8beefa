import type { Actor } from '@/lib/access/actor';
import { runAs } from '@/lib/access/run-command';
import type { WriteOptions } from '@/lib/access/scoped-db';
import { addParticipant } from '@/lib/records/participant/add-participant.command';
import { addParticipantInput } from '@/lib/records/participant/participant.input';
import { recordPracticeInput } from '@/lib/records/practice/practice.input';
import { recordPractice } from '@/lib/records/practice/record-practice.command';
import { recordSale } from '@/lib/records/sale/record-sale.command';
import { recordSaleInput } from '@/lib/records/sale/sale.input';
import { recordTraining } from '@/lib/records/training/record-training.command';
import { recordTrainingInput } from '@/lib/records/training/training.input';
import { testDay } from '../../support/bags';

const on = (options: WriteOptions) => ({ now: testDay, ...options });

/** Nine hundred grams for 9.50 at the farm gate on 2026-05-10, unless said otherwise. */
export const sell = (actor: Actor, siteId: string, changes: object = {}, options: WriteOptions = {}) =>
  runAs(
    actor,
    recordSaleInput,
    recordSale,
    { siteId, soldOn: '2026-05-10', outlet: 'farm_gate', mass: 900, amount: '9.50', ...changes },
    on(options),
  );

/** A person who agreed to be counted on 2026-05-01, unless said otherwise. */
export const addPerson = (
  actor: Actor,
  siteId: string,
  name: string,
  changes: object = {},
  options: WriteOptions = {},
) =>
  runAs(
    actor,
    addParticipantInput,
    addParticipant,
    { siteId, name, consents: 'counted', agreedOn: '2026-05-01', ...changes },
    on(options),
  );

/** A training about hygiene on 2026-05-05 with a head count of 9, unless said otherwise. */
export const train = (actor: Actor, siteId: string, changes: object = {}) =>
  runAs(
    actor,
    recordTrainingInput,
    recordTraining,
    { siteId, heldOn: '2026-05-05', title: 'Clean hands', topic: 'hygiene', headCount: '9', ...changes },
    on({}),
  );

/** Hygiene taken up on 2026-05-01, unless said otherwise. */
export const adopt = (actor: Actor, siteId: string, changes: object = {}) =>
  runAs(
    actor,
    recordPracticeInput,
    recordPractice,
    { siteId, practice: 'hygiene', since: '2026-05-01', ...changes },
    on({}),
  );

/** The id of what was recorded; a refusal fails the test that arranged it. */
export function idOf(result: Awaited<ReturnType<typeof sell>>): string {
  if (result.kind !== 'ok') throw new Error(JSON.stringify(result));
  return result.value.id;
}
