import { type Failure, invalid } from '@/lib/base/result';
import type { Batch, Finding, Site } from '@/lib/database/generated/client';
import { checkEventDate } from '../batch/check-event-date';
import { asCalendarDate } from '../fields/stored-date';
import type { FollowUpInput } from './follow-up.input';

/** A follow-up is no earlier than its finding and concerns no more units than were found. */
export function checkFollowUp(
  input: FollowUpInput,
  finding: Finding,
  batch: Batch & { site: Site },
  now: Date,
): Failure | undefined {
  // What became of contaminated units may well be noted after the batch was closed.
  const wrongDate = checkEventDate('doneOn', input.doneOn, { ...batch, closedOn: null }, now);
  if (wrongDate) return wrongDate;
  const foundOn = asCalendarDate(finding.foundOn);
  if (input.doneOn < foundOn) return invalid('doneOn', 'before', { date: foundOn });
  if (input.units > finding.units) return invalid('units', 'more-than-found', { units: finding.units });
  return undefined;
}
