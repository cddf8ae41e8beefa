import { z } from 'zod';
import { isCalendarDate } from '@/lib/growing/calendar-date';

const date = z.string('missing').trim().min(1, 'missing').refine(isCalendarDate, 'not-a-date');

export const buildReportInput = z.object({
  title: z.string('missing').trim().min(1, 'missing').max(160, 'too-long'),
  from: date,
  to: date,
});

export const publishReportInput = z.object({ id: z.uuid('not-an-option') });
