import { addDays } from '@/lib/growing/calendar-date';
import { quietDays } from '@/lib/growing/quiet-days';
import type { ContainerKind } from '@/lib/growing/vocabulary';

export type NextStep = 'close' | 'look' | 'weigh' | 'check' | 'none';

/** The one thing to do next with a batch, by its records and its species' timing. */
export function nextStep(batch: {
  readonly containerKind: ContainerKind;
  readonly closed: boolean;
  readonly live: number;
  readonly notInspected: boolean;
  readonly inoculatedOn: string;
  readonly lastHarvestOn: string | null;
  readonly lastEntryOn: string;
  readonly colonised: boolean;
  readonly colonisedDays: number | null;
  readonly firstHarvestDays: number | null;
  readonly today: string;
}): NextStep {
  const { today, inoculatedOn, lastHarvestOn } = batch;
  if (batch.closed) return 'none';
  if (batch.live === 0) return 'close';
  if (batch.notInspected) return 'look';
  const due = (days: number | null) => days !== null && today >= addDays(inoculatedOn, days);
  if (lastHarvestOn !== null)
    return addDays(batch.lastEntryOn, quietDays(batch.containerKind)) <= today ? 'close' : 'weigh';
  if (due(batch.firstHarvestDays)) return 'weigh';
  return !batch.colonised && due(batch.colonisedDays) ? 'check' : 'look';
}
