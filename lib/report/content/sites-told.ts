import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { readSitesLeft } from '@/lib/analysis/production/read-sites-left';
import type { FunderReportContent } from './funder-report';

/**
 * Which of the sites active in the period a report names, by what each had agreed when the report was built. Members read
 * a published report too, so a site is named only where it is named to both; one that shares nothing with either is left
 * out of the sites told and counted as left out. Sums hold them all.
 */
export async function sitesTold(
  context: ReadContext,
  activeIds: readonly string[],
): Promise<NonNullable<FunderReportContent['sites']>> {
  const { db } = context;
  const sites = await db.site.findMany({
    where: { id: { in: [...activeIds] } },
    select: {
      name: true,
      leftAt: true,
      sharingAgreements: { select: { withMembers: true, withFunder: true } },
    },
    orderBy: { name: 'asc' },
  });
  const named: string[] = [];
  let anonymous = 0;
  let leftOut = 0;
  for (const { name, leftAt, sharingAgreements } of sites) {
    const [said] = sharingAgreements;
    if (said?.withMembers === 'named' && said.withFunder === 'named') named.push(name);
    else if (said?.withFunder === 'not_at_all' && leftAt === null) leftOut += 1;
    else anonymous += 1;
  }
  return { named, anonymous, leftOut, left: await readSitesLeft(context) };
}
