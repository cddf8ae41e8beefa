import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { invalid, notFound, ok, type Question, type Result } from '@/lib/base/result';
import type { Batch } from '@/lib/database/generated/client';
import { biologicalEfficiency, whyNoBe } from '@/lib/growing/biological-efficiency';
import { todayInZone } from '@/lib/growing/calendar-date';
import { speciesDefaults } from '@/lib/growing/species-defaults';
import { questionBe } from '@/lib/growing/yield-plausibility';
import { asDate } from '../fields/stored-date';
import { askFirst } from './ask-first';
import { checkEventDate } from './check-event-date';
import type { closeBatchInput } from './close-batch.input';
import { lockBatch } from './lock-batch';
import { openBatch } from './open-batch';
import { recordedSpan } from './recorded-span';

type Closing = z.output<typeof closeBatchInput>;

/** Asks about a finished batch whose biological efficiency is far from what is known of its kind. */
function finishedQuestions(
  batch: Batch,
  speciesCode: string,
  freshGrams: number,
  input: Closing,
): Question[] {
  if (freshGrams === 0 || whyNoBe(batch.containerKind, true) !== null) return [];
  const be = biologicalEfficiency(freshGrams, batch.dryGrams);
  if (be.kind !== 'value') return [];
  const question = questionBe(be.value.bePercent, {
    container: batch.containerKind,
    isOyster: speciesDefaults.some(({ code, isOyster }) => code === speciesCode && isOyster),
    finished: input.closeReason === 'finished',
    recordedAsLost: input.closeReason !== 'finished',
  });
  if (question === null) return [];
  const percent = Number(be.value.bePercent.toFixed(1));
  return [{ field: 'closeReason', code: question.code, values: { percent, code: batch.code } }];
}

/** Closes a batch: no more picking is expected. Without a harvest it must say whether none was picked or weighed. */
export async function closeBatch(context: WriteContext, input: Closing): Promise<Result<{ id: string }>> {
  const { db, now } = context;
  await lockBatch(context, input.batchId);
  const batch = await openBatch(context, input.batchId);
  if (!batch) return notFound;
  if (batch.closedOn !== null) return invalid('', 'closed');
  const wrongDate = checkEventDate('closedOn', input.closedOn, batch, now);
  if (wrongDate) return wrongDate;
  const { leftAt, timeZone } = batch.site;
  const lastDay = leftAt ? todayInZone(timeZone, leftAt) : undefined;
  if (lastDay !== undefined && input.closedOn > lastDay)
    return invalid('closedOn', 'after', { date: lastDay });
  const span = await recordedSpan(context, batch.id);
  if (span && input.closedOn < span.last) return invalid('closedOn', 'before', { date: span.last });
  const { _sum } = await db.weighingLine.aggregate({
    where: { batchId: batch.id, voidedAt: null, weighing: { voidedAt: null } },
    _sum: { freshGrams: true },
  });
  const freshGrams = _sum.freshGrams ?? 0;
  const harvested = _sum.freshGrams !== null;
  if (!harvested && input.noHarvest === null) return invalid('noHarvest', 'missing-choice');
  const species = await db.species.findFirst({ where: { id: batch.speciesId } });
  const questions = askFirst(context, finishedQuestions(batch, species?.code ?? '', freshGrams, input));
  if (questions) return questions;
  await db.batch.updateMany({
    where: { id: batch.id, voidedAt: null, closedOn: null },
    data: {
      closedOn: asDate(input.closedOn),
      closeReason: input.closeReason,
      spentDestination: input.spentDestination,
      noHarvest: harvested ? null : input.noHarvest,
    },
  });
  return ok({ id: batch.id });
}
