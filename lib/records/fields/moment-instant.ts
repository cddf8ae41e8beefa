import { instantInZone } from '@/lib/growing/instant-in-zone';
import type { Moment } from './moment-field';

/** The instant of a moment, by the clock of a site's zone. */
export function momentInstant(moment: Moment, timeZone: string): Date {
  return moment.kind === 'instant' ? moment.at : instantInZone(moment.date, moment.time, timeZone);
}
