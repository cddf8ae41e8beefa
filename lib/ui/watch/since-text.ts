import type { Signal } from '@/lib/analysis/watch-question/signal';
import { formatDate } from '../format/date-text';

/** The day since which a signal stands: of several records that of the oldest, "15 Nov 2026". */
export function sinceText(signal: Signal, locale: string): string {
  return formatDate(signal.kind === 'records' ? signal.oldest : signal.since, locale);
}
