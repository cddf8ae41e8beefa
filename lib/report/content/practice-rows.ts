import type { PracticeTakenUp } from '@/lib/analysis/production/read-practices-taken-up';
import type { FunderReportContent } from './funder-report';
import { mayBeShown, type ProtectionRule } from './protect-cells';

/**
 * Sites that took up each practice; each counts one, so fewer than the rule's sites are not told. No total: a site may
 * take up several practices.
 */
export function practiceRows(
  taken: readonly PracticeTakenUp[],
  rule: ProtectionRule,
): FunderReportContent['practices'] {
  const methods = new Map(taken.map((row) => [row.methodId, row]));
  return [...methods.values()].map(({ methodId, methodEn, methodEs }) => {
    const sites = new Map(taken.filter((row) => row.methodId === methodId).map((row) => [row.siteId, 1]));
    return {
      methodEn,
      methodEs,
      sites: mayBeShown(sites, rule)
        ? { key: methodId, kind: 'shown', amount: sites.size, sites: sites.size }
        : { key: methodId, kind: 'protected' },
    };
  });
}
