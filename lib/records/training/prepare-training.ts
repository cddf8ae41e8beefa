import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { invalid, notFound, ok } from '@/lib/base/result';
import { asDate } from '../fields/stored-date';
import { refuseFuture, siteOfRecord } from '../programme/site-of-record';
import type { recordTrainingInput } from './training.input';

export type TrainingFields = Omit<z.output<typeof recordTrainingInput>, 'id'>;

const longestName = 120;

/**
 * The columns of a training and the names of people new to it, or why they cannot be. `others`: how many attend by name
 * that the form does not show, since they belong to a site out of the actor's sight.
 */
export async function prepareTraining(context: WriteContext, input: TrainingFields, others: number) {
  const site = await siteOfRecord(context, input.siteId);
  if (!site) return notFound;
  const future = refuseFuture('heldOn', input.heldOn, site, context);
  if (future) return future;
  const known = await context.db.participant.count({
    where: { id: { in: input.participants }, voidedAt: null, erasedAt: null },
  });
  if (known !== new Set(input.participants).size) return invalid('participants', 'not-an-option');
  const newNames = namesOf(input.newNames);
  if (newNames.some((name) => name.length > longestName))
    return invalid('newNames', 'too-long', { max: longestName });
  const named = known + newNames.length + others;
  const { headCount, title, topic, place, minutes, note } = input;
  if (headCount === null && named === 0) return invalid('headCount', 'nobody-came');
  if (headCount !== null && headCount < named) return invalid('headCount', 'fewer-than-named', { named });
  return ok({
    row: { heldOn: asDate(input.heldOn), title, topic, place, minutes, headCount, note },
    newNames,
  });
}

function namesOf(text: string | null): string[] {
  const names = (text ?? '').split(/\r?\n/).map((name) => name.replaceAll('\t', ' ').trim());
  return [...new Map(names.filter((name) => name !== '').map((name) => [name.toLowerCase(), name])).values()];
}
