import type { ReadContext } from '@/lib/access/context';
import { asDate } from '@/lib/records/fields/stored-date';
import type { ReportScope } from './content/build-content';
import type { EarlierReport } from './content/carry-over';
import { funderReportContent } from './content/funder-report';
import { reportGround } from './content/ground';

/**
 * Reports over the same period that have been published, the latest first; also those taken out since, which somebody
 * may have read; with `since`, those published after that instant. One without a ground was published before grounds were kept.
 */
export async function readEarlierReports(
  { db }: ReadContext,
  { period }: Pick<ReportScope, 'period'>,
  since?: Date,
): Promise<EarlierReport[]> {
  const rows = await db.report.findMany({
    where: {
      periodFrom: asDate(period.from),
      periodTo: asDate(period.to),
      publishedAt: since ? { gt: since } : { not: null },
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
