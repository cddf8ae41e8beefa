import { z } from 'zod';
import { dateTextOf } from './date-field';
import { alwaysTakes, mayTake, scriptShapes } from './script-shape';

const clock = /^([01]?\d|2[0-3])[:.h]?([0-5]\d)$/;
const instant = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}(:\d{2}(\.\d{1,3})?)?(Z|[+-]\d{2}:\d{2})$/;

/** A day and a time of day by a site's clock, or an instant that a script gave. */
export type Moment =
  | { readonly kind: 'local'; readonly date: string; readonly time: string }
  | { readonly kind: 'instant'; readonly at: Date };

function momentOf(raw: unknown): Moment | 'missing' | 'not-a-date' | 'not-a-time' {
  if (raw instanceof Date) return { kind: 'instant', at: raw };
  if (typeof raw === 'string' && instant.test(raw)) {
    // The years of a date field; whatever is not there is no time of a day that exists either.
    const at = new Date(raw);
    const year = at.getUTCFullYear();
    return year >= 1950 && year <= 2100 ? { kind: 'instant', at } : 'not-a-date';
  }
  const date = dateTextOf(raw);
  if (date === undefined) return 'not-a-date';
  const typed = typeof raw === 'object' && raw !== null ? (raw as { time?: unknown }).time : undefined;
  const time = typeof typed === 'string' ? typed.trim() : '';
  if (date === '') return 'missing';
  if (time === '') return 'not-a-time';
  const match = clock.exec(time);
  return match
    ? { kind: 'local', date, time: `${(match[1] ?? '').padStart(2, '0')}:${match[2]}` }
    : 'not-a-time';
}

const instantText = z.iso.datetime({ offset: true });

/** A moment that must be given: the parts a moment field posts, or an ISO instant. */
export const momentField = z
  .unknown()
  .optional()
  .transform((raw, context): Moment => {
    const moment = momentOf(raw);
    if (typeof moment !== 'string') return moment;
    context.addIssue({ code: 'custom', message: moment });
    return z.NEVER;
  })
  .register(scriptShapes, alwaysTakes({ json: instantText }));

/** A moment that may be left out; without a date it is null. */
export const optionalMomentField = z
  .unknown()
  .optional()
  .transform((raw, context): Moment | null => {
    const moment = momentOf(raw);
    if (moment === 'missing') return null;
    if (typeof moment !== 'string') return moment;
    context.addIssue({ code: 'custom', message: moment });
    return z.NEVER;
  })
  .register(scriptShapes, mayTake({ json: instantText }));
