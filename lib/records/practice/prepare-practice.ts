import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { invalid, notFound, ok } from '@/lib/base/result';
import { asDate } from '../fields/stored-date';
import { refuseFuture, siteOfRecord } from '../programme/site-of-record';
import type { recordPracticeInput } from './practice.input';

type Practice = Omit<z.output<typeof recordPracticeInput>, 'id'>;

/** The columns of a practice from its form, or why they cannot be. */
export async function preparePractice(context: WriteContext, input: Practice) {
  const { siteId, practice, description, since, until, growers } = input;
  const site = await siteOfRecord(context, siteId);
  if (!site) return notFound;
  const future =
    refuseFuture('since', since, site, context) ??
    (until === null ? undefined : refuseFuture('until', until, site, context));
  if (future) return future;
  if (until !== null && until < since) return invalid('until', 'before', { date: since });
  if (practice === 'other' && description === null) return invalid('description', 'missing');
  return ok({
    ...{ practice, description, growers },
    since: asDate(since),
    until: until === null ? null : asDate(until),
  });
}
