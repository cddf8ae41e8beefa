import 'server-only';
import { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { invalid, notFound, ok, type Result } from '@/lib/base/result';
import { asCalendarDate } from '@/lib/records/fields/stored-date';
import { reportIndicators } from './content/report-indicators.input';
import { samePeriod } from './content/same-period';
import { lockReports } from './lock-reports';
import type { rebuildDraftInput } from './rebuild-draft.input';
import { reportDays } from './report-days';
import { reportWords } from './report-words';
import { storeReport } from './store-report';
import { copyStories } from './story/copy-stories';

/**
 * Builds a draft anew from the records as they are now, for other days or the same, with its title, words and stories. The
 * draft that it replaces is taken off the list and kept, so that what became different can be told. A later version of a
 * published report keeps its period, or it would be no version of it. A second request answers with the first one's draft.
 */
export async function rebuildDraft(
  context: WriteContext,
  input: z.output<typeof rebuildDraftInput>,
): Promise<Result<{ id: string }>> {
  const { db, actor, now } = context;
  if (actor.role !== 'coordinator') return notFound;
  const days = reportDays(input);
  if (days.kind !== 'ok') return days;
  await lockReports(context);
  const done = await db.report.findFirst({ where: { rebuiltFromId: input.id, voidedAt: null } });
  if (done) return ok({ id: done.id });
  const draft = await db.report.findFirst({
    where: { id: input.id, voidedAt: null, publishedAt: null },
    include: { follows: { select: { id: true, version: true } } },
  });
  if (!draft) return notFound;
  const before = { from: asCalendarDate(draft.periodFrom), to: asCalendarDate(draft.periodTo) };
  if (draft.follows && !samePeriod(before, days.value.period)) return invalid('from', 'report-follows');
  const { count } = await db.report.updateMany({
    where: { id: draft.id, revision: draft.revision, voidedAt: null },
    data: { voidedAt: now, voidReason: 'built anew' },
  });
  // Somebody wrote words since they were read here.
  if (count === 0) return { kind: 'conflict', current: draft.revision };
  const id = await storeReport(context, {
    title: draft.title,
    programme: draft.programme,
    ...days.value,
    indicators: z.array(z.enum(reportIndicators)).parse(draft.indicators),
    words: reportWords.parse(draft.words),
    rebuiltFromId: draft.id,
    ...(draft.follows ? { follows: draft.follows } : {}),
  });
  await copyStories(context, draft.id, id);
  return ok({ id });
}
