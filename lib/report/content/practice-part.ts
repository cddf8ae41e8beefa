import type { PracticeTakenUp } from '@/lib/analysis/production/read-practices-taken-up';
import type { PracticeInPeriod } from '@/lib/analysis/programme/read-practices';
import type { FunderReportContent, ReportCell } from './funder-report';
import { type GroundSum, groundSumOf } from './ground';
import { headsOf } from './heads-of';
import { mayBeShown, type ProtectionRule } from './protect-cells';
import type { ReportPart } from './report-part';
import { tellsFew } from './tells-few';

type Told = Pick<FunderReportContent, 'practices' | 'adopted'>;

const countOf = (sites: readonly string[]) => new Map(sites.map((site) => [site, 1]));

/** Sites, each counting one: fewer than the rule's are not told. */
function sitesCell(key: string, sites: readonly string[], rule: ProtectionRule): ReportCell {
  return mayBeShown(countOf(sites), rule)
    ? { key, kind: 'shown', amount: sites.length, sites: sites.length }
    : { key, kind: 'protected' };
}

function adoptedRow(row: PracticeInPeriod, rule: ProtectionRule) {
  const { practice, adoptedAt, standingAt, growers } = row;
  const adopted = sitesCell(practice, adoptedAt, rule);
  const apart = tellsFew(
    [groundSumOf(practice, countOf(adoptedAt))],
    [groundSumOf(practice, countOf(standingAt))],
    rule,
    false,
  );
  const standing =
    adopted.kind === 'shown' && apart
      ? ({ key: practice, kind: 'protected' } as const)
      : sitesCell(practice, standingAt, rule);
  const told = { practice, adopted, standing };
  return {
    ...told,
    growers: adopted.kind === 'shown' ? headsOf(growers, rule) : ({ kind: 'protected' } as const),
  };
}

/**
 * Sites that took up each practice: by the records of practices, and by the first batch treated so. No total: a site may
 * take up several. A site that keeps a practice since before counts in `standing` alone; where those few would follow
 * from the two numbers, the second is not told.
 */
export function practicePart(
  taken: readonly PracticeTakenUp[],
  adopted: readonly PracticeInPeriod[],
  rule: ProtectionRule,
): ReportPart<Told> {
  const methods = [...new Map(taken.map((row) => [row.methodId, row])).values()];
  const sitesOf = (id: string) => taken.filter(({ methodId }) => methodId === id).map(({ siteId }) => siteId);
  const ground: Record<string, readonly GroundSum[]> = {};
  const note = (name: string, cell: ReportCell, sites: readonly string[]) => {
    ground[`${name} ${cell.key}`] = cell.kind === 'shown' ? [groundSumOf(cell.key, countOf(sites))] : [];
    return cell;
  };
  const practices = methods.map(({ methodId, methodEn, methodEs }) => ({
    ...{ methodEn, methodEs },
    sites: note('first', sitesCell(methodId, sitesOf(methodId), rule), sitesOf(methodId)),
  }));
  const rows = adopted.map((row) => adoptedRow(row, rule));
  for (const [at, row] of rows.entries()) {
    note('adopted', row.adopted, adopted[at]?.adoptedAt ?? []);
    note('standing', row.standing, adopted[at]?.standingAt ?? []);
  }
  return { content: { practices, adopted: rows }, ground };
}
