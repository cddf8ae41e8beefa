import 'server-only';
import type { WriteContext } from '@/lib/access/context';
import { newId } from '@/lib/base/new-id';
import { asDate } from '@/lib/records/fields/stored-date';
import { buildContent, type ReportScope } from './content/build-content';
import { carryOver } from './content/carry-over';
import { readEarlierReports } from './earlier-reports';
import type { ReportWords } from './report-words';

export type ReportToStore = ReportScope & {
  readonly title: string;
  readonly words: ReportWords;
  /** The report that this one is a later version of. */
  readonly follows?: { readonly id: string; readonly version: number };
  /** The draft that it replaces. */
  readonly rebuiltFromId?: string;
};

/** Works out a report from the records as they are now and stores it; the funder sees it only once it is published. */
export async function storeReport(context: WriteContext, report: ReportToStore): Promise<string> {
  const { db, actor, origin, now } = context;
  const { title, words, follows, period, baseline, indicators } = report;
  const earlier = await readEarlierReports(context, report);
  const { content, ground } = carryOver(await buildContent(context, report, now), earlier);
  const id = newId();
  await db.report.create({
    data: {
      networkId: actor.networkId,
      id,
      title,
      programme: report.programme,
      periodFrom: asDate(period.from),
      periodTo: asDate(period.to),
      ...(baseline === undefined
        ? {}
        : { baselineFrom: asDate(baseline.from), baselineTo: asDate(baseline.to) }),
      indicators: [...indicators],
      words,
      ...(follows === undefined ? {} : { followsId: follows.id, version: follows.version + 1 }),
      ...(report.rebuiltFromId === undefined ? {} : { rebuiltFromId: report.rebuiltFromId }),
      // A detour by text: the content is plain data, the client's type for JSON wants an index signature.
      content: JSON.parse(JSON.stringify(content)),
      builtAt: now,
      origin,
      createdById: actor.personId,
    },
  });
  await db.reportGround.create({ data: { networkId: actor.networkId, id, ground } });
  return id;
}
