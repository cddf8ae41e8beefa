import type { ReportHeads } from './funder-report';
import type { ProtectionRule } from './protect-cells';

/**
 * A number of people: told when nobody, or at least as many people stand behind it as sites behind a cell. Trainings are
 * what the programme itself does; it is people, not sites, whom a small number would give away.
 */
export function headsOf(people: number, { minSites }: ProtectionRule): ReportHeads {
  return people === 0 || people >= minSites ? { kind: 'shown', people } : { kind: 'protected' };
}
