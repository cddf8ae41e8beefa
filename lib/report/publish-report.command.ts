import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { invalid, notFound, ok, type Result } from '@/lib/base/result';
import type { publishReportInput } from './build-report.input';
import { tellsBeside } from './content/carry-over';
import { funderReportContent } from './content/funder-report';
import { reportGround } from './content/ground';
import { readEarlierReports } from './earlier-reports';
import { lockReports } from './lock-reports';

/**
 * Lets funders and members of the network read a report; from then on it is fixed. A draft was held against the reports
 * that were published when it was built; beside one published since it must not tell of few sites either, so it is held
 * against all of them again: two drafts may have been built side by side.
 */
export async function publishReport(
  context: WriteContext,
  input: z.output<typeof publishReportInput>,
): Promise<Result<{ id: string }>> {
  const { db, actor, now } = context;
  if (actor.role !== 'coordinator') return notFound;
  await lockReports(context);
  const draft = await db.report.findFirst({
    where: { id: input.id, voidedAt: null },
    include: { ground: true },
  });
  if (!draft) return notFound;
  if (draft.publishedAt !== null) return ok({ id: draft.id });
  if (await tellsBesidePublished(context, draft)) return invalid('', 'report-built-before');
  if (await namesTakenBack(context, draft.content)) return invalid('', 'report-name-taken-back');
  await db.report.updateMany({
    where: { id: draft.id, voidedAt: null, publishedAt: null },
    data: { publishedAt: now },
  });
  return ok({ id: draft.id });
}

type Draft = {
  readonly content: unknown;
  readonly ground: { readonly ground: unknown } | null;
};

async function tellsBesidePublished(context: WriteContext, draft: Draft): Promise<boolean> {
  const content = funderReportContent.parse(draft.content);
  const { from, to, baseline } = content;
  const built = { content, ground: reportGround.parse(draft.ground?.ground ?? {}) };
  return tellsBeside(built, await readEarlierReports(context, { period: { from, to }, baseline }));
}

/** Whether a site that the draft names is not named to readers any more, or goes by another name. */
async function namesTakenBack({ db }: WriteContext, content: unknown): Promise<boolean> {
  const named = funderReportContent.parse(content).sites?.named ?? [];
  const still = await db.site.findMany({
    where: {
      name: { in: [...named] },
      sharingAgreements: { some: { withMembers: 'named', withFunder: 'named' } },
    },
    select: { name: true },
  });
  const names = new Set(still.map(({ name }) => name));
  return named.some((name) => !names.has(name));
}
