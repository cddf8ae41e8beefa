import type { ReadContext } from '@/lib/access/context';
import { asDate } from '@/lib/records/fields/stored-date';
import type { ReportScope } from './content/build-content';
import type { EarlierReport } from './content/carry-over';
import { funderReportContent } from './content/funder-report';
import { reportGround } from './content/ground';

/**
 * Reports that have been published over days of its period or of its baseline, or beside any of these as their baseline, the
 * latest first; also those taken out since, which somebody may have read. One without a ground was
 * published before grounds were kept.
 */
export async function readEarlierReports(
  { db }: ReadContext,
  { period, baseline }: Pick<ReportScope, 'period' | 'baseline'>,
): Promise<EarlierReport[]> {
  const days = [period, ...(baseline === undefined ? [] : [baseline])].map(({ from, to }) => ({
    from: asDate(from),
    to: asDate(to),
  }));
  const rows = await db.report.findMany({
    where: {
      OR: days.flatMap(({ from, to }) => [
        { periodFrom: { lte: to }, periodTo: { gte: from } },
        { baselineFrom: { lte: to }, baselineTo: { gte: from } },
      ]),
      publishedAt: { not: null },
    },
    include: { ground: { select: { ground: true } } },
    orderBy: [{ publishedAt: 'desc' }, { id: 'desc' }],
  });
  return rows.map(({ content, ground, version }) => ({
    content: funderReportContent.parse(content),
    ground: reportGround.parse(ground?.ground ?? {}),
    version,
  }));
}
