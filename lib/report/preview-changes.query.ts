import 'server-only';
import { z } from 'zod';
import type { ReadContext } from '@/lib/access/context';
import { asCalendarDate } from '@/lib/records/fields/stored-date';
import { buildContent } from './content/build-content';
import { type FunderReportContent, funderReportContent } from './content/funder-report';
import { reportGround } from './content/ground';
import { reportIndicators } from './content/report-indicators.input';
import { type ChangedSum, changedSums } from './since/changed-sums';
import { type LaterEntries, readLaterEntries } from './since/read-later-entries';

export type ReportChanges = {
  /**
   * The report as it would be built now, before it is held against the versions that readers have: what this version protects
   * beside other reports it tells, so that only what the version tells may be compared (`toldChanges`).
   */
  readonly content: FunderReportContent;
  /** Which sums that are told then and now differ, and at which site; undefined for a report built before that was kept. */
  readonly sums: readonly ChangedSum[] | undefined;
  /** Records of the period written, corrected or voided since the report was built. */
  readonly entries: readonly LaterEntries[];
  readonly siteNames: ReadonlyMap<string, string>;
};

/** What the records would say now of a report's periods, for a coordinator. */
export async function previewChanges(
  context: ReadContext,
  id: string,
  now: Date,
): Promise<ReportChanges | undefined> {
  const { db, actor } = context;
  if (actor.role !== 'coordinator') return undefined;
  const row = await db.report.findFirst({ where: { id, voidedAt: null }, include: { ground: true } });
  if (!row) return undefined;
  const { baselineFrom, baselineTo, programme } = row;
  const period = { from: asCalendarDate(row.periodFrom), to: asCalendarDate(row.periodTo) };
  const { content, ground } = await buildContent(
    context,
    {
      programme,
      period,
      baseline:
        baselineFrom && baselineTo
          ? { from: asCalendarDate(baselineFrom), to: asCalendarDate(baselineTo) }
          : undefined,
      indicators: z.array(z.enum(reportIndicators)).parse(row.indicators),
    },
    now,
  );
  const version = funderReportContent.parse(row.content);
  const toldBoth = ({ part }: ChangedSum) =>
    [version, content].every(
      ({ harvest, residues }) => (part === 'residues' ? residues : harvest).total.kind === 'shown',
    );
  const sites = await db.site.findMany({ select: { id: true, name: true } });
  return {
    content,
    sums: row.ground
      ? changedSums(reportGround.parse(row.ground.ground), ground).filter(toldBoth)
      : undefined,
    entries: await readLaterEntries(context, period, row.builtAt),
    siteNames: new Map(sites.map(({ id: siteId, name }) => [siteId, name])),
  };
}
