import { z } from 'zod';
import { isCalendarDate } from '@/lib/growing/calendar-date';
import { isoDateOf } from '@/lib/growing/typed-date';

type Boxes = { readonly day?: unknown; readonly month?: unknown; readonly year?: unknown };

function boxText(value: unknown): string {
  return typeof value === 'string' ? value.trim() : '';
}

/** The text of a day: one ISO date from a script, or what the three boxes of a form hold. */
function dayText(raw: unknown): string | undefined {
  if (typeof raw !== 'object' || raw === null) return boxText(raw);
  const { day, month, year } = raw as Boxes;
  const boxes = [boxText(day), boxText(month), boxText(year)] as const;
  return boxes.every((text) => text === '') ? '' : isoDateOf(...boxes);
}

/** A calendar date 'YYYY-MM-DD'. */
const day = z.unknown().transform((raw, context): string => {
  const text = dayText(raw);
  if (text !== undefined && isCalendarDate(text)) return text;
  context.addIssue({ code: 'custom', message: text === '' ? 'missing' : 'not-a-date' });
  return z.NEVER;
});

export const buildReportInput = z.object({
  title: z.string('missing').trim().min(1, 'missing').max(160, 'too-long'),
  from: day,
  to: day,
});

export const publishReportInput = z.object({ id: z.uuid('not-an-option') });
