import type { ShedDue } from '@/lib/offline/shed-snapshot';
import type { DueLine } from '@/lib/records/today/list-due.query';
import { formatDayMonth } from '../format/date-text';
import type { DynamicWords } from '../i18n/dynamic-words';

function addressOf(line: DueLine): string {
  switch (line.kind) {
    case 'treatment-running':
      return `/treatments/${line.runId}`;
    case 'look':
      return `/quick/check?batch=${line.batchId}`;
    case 'first-harvest':
    case 'next-flush':
      return `/quick/harvest?batch=${line.batchId}`;
    case 'quiet':
      return `/batches/${line.batchId}/close`;
  }
}

/** A line of what is due in words, for a phone that shows it with no signal. */
export function dueText(line: DueLine, words: DynamicWords, locale: string): ShedDue {
  const since = { date: formatDayMonth(line.on, locale), days: line.overdueDays };
  return {
    text: words(`today.kind.${line.kind}`, { code: line.code }),
    place: line.siteName,
    when: words('today.since', since),
    href: addressOf(line),
    dueAt: line.on,
  };
}
