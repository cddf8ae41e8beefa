import { z } from 'zod';
import { dateField, optionalDateField } from '@/lib/records/fields/date-field';
import { optionalTextField, textField } from '@/lib/records/fields/text-field';
import { reportIndicators } from './content/report-indicators.input';

/** Ticked boxes: none, one or several of the indicators; at least one must be. */
const indicatorsField = z
  .unknown()
  .optional()
  .transform((raw, context) => {
    const list = raw === undefined || raw === null || raw === '' ? [] : Array.isArray(raw) ? raw : [raw];
    const parsed = z.array(z.enum(reportIndicators)).safeParse(list);
    if (parsed.success && parsed.data.length > 0)
      return reportIndicators.filter((indicator) => parsed.data.includes(indicator));
    context.addIssue({ code: 'custom', message: parsed.success ? 'missing-choice' : 'not-an-option' });
    return z.NEVER;
  });

export const buildReportInput = z.object({
  title: textField(160),
  programme: optionalTextField(160),
  from: dateField,
  to: dateField,
  baselineFrom: optionalDateField,
  baselineTo: optionalDateField,
  indicators: indicatorsField,
});

export const publishReportInput = z.object({ id: z.uuid('not-an-option') });
