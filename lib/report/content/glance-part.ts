import type { Production } from '@/lib/analysis/production/read-production';
import { amountPart } from './amount-part';
import { headsOf } from './heads-of';
import type { ProtectionRule } from './protect-cells';
import type { ReportPart } from './report-part';

/** Who took part and how much was begun: batches are told when enough sites began some, people when there are enough. */
export function glancePart(
  { started, sitesActive, peopleActive }: Production,
  rule: ProtectionRule,
): ReportPart<{
  sitesActive: number;
  peopleActive: ReturnType<typeof headsOf>;
  batchesStarted: ReturnType<typeof amountPart>['table']['total'];
}> {
  const batches = amountPart(started, () => 'started', rule);
  return {
    content: {
      sitesActive: sitesActive.length,
      peopleActive: headsOf(peopleActive, rule),
      batchesStarted: batches.table.total,
    },
    ground: { started: batches.known },
  };
}
