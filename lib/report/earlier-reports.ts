import type { ReadContext } from '@/lib/access/context';
import { asDate } from '@/lib/records/fields/stored-date';
import type { ReportScope } from './content/build-content';
import type { EarlierReport } from './content/carry-over';
import { funderReportContent } from './content/funder-report';
import { reportGround } from './content/ground';

type Stretch = { readonly from: Date; readonly to: Date };
const dayMilliseconds = 86_400_000;

/** Whether two stretches share a day or follow on each other: together their sums tell of a longer one. */
const meets = (one: Stretch, other: Stretch) =>
  one.from.getTime() <= other.to.getTime() + dayMilliseconds &&
  other.from.getTime() <= one.to.getTime() + dayMilliseconds;

/** Ids of the published reports that these days lead to, from one stretch that meets another to the next. */
async function reportsThatMeet({ db }: ReadContext, days: readonly Stretch[]): Promise<string[]> {
  const rows = await db.report.findMany({
    where: { publishedAt: { not: null } },
    select: { id: true, periodFrom: true, periodTo: true, baselineFrom: true, baselineTo: true },
  });
  const waiting = rows.map(({ id, periodFrom, periodTo, baselineFrom, baselineTo }) => ({
    id,
    stretches: [
      { from: periodFrom, to: periodTo },
      ...(baselineFrom && baselineTo ? [{ from: baselineFrom, to: baselineTo }] : []),
    ],
  }));
  const met: typeof waiting = [];
  let reached = [...days];
  while (reached.length > 0) {
    const next = waiting.filter(
      (one) => !met.includes(one) && one.stretches.some((own) => reached.some((other) => meets(own, other))),
    );
    met.push(...next);
    reached = next.flatMap(({ stretches }) => stretches);
  }
  return met.map(({ id }) => id);
}

/**
 * Reports that have been published over days that its period or baseline shares or follows on, over days that those share, and
 * so on, the latest first; also those taken out since, which somebody may have read. One without a ground was published
 * before grounds were kept.
 */
export async function readEarlierReports(
  context: ReadContext,
  { period, baseline }: Pick<ReportScope, 'period' | 'baseline'>,
): Promise<EarlierReport[]> {
  const days = [period, ...(baseline === undefined ? [] : [baseline])].map(({ from, to }) => ({
    from: asDate(from),
    to: asDate(to),
  }));
  const rows = await context.db.report.findMany({
    where: { id: { in: await reportsThatMeet(context, days) } },
    include: { ground: { select: { ground: true } } },
    orderBy: [{ publishedAt: 'desc' }, { id: 'desc' }],
  });
  return rows.map(({ content, ground, version }) => ({
    content: funderReportContent.parse(content),
    ground: reportGround.parse(ground?.ground ?? {}),
    version,
  }));
}
