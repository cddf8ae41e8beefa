import { z } from 'zod';
import { isCurrency } from '@/lib/growing/money';
import { optionalMoneyField } from '../fields/money-field';
import { revisionField } from '../fields/revision-field';
import { textField } from '../fields/text-field';

const currencyField = z
  .unknown()
  .optional()
  .transform((raw, context): string => {
    const text = typeof raw === 'string' ? raw.trim().toUpperCase() : '';
    if (isCurrency(text)) return text;
    context.addIssue({ code: 'custom', message: text === '' ? 'missing-choice' : 'not-an-option' });
    return z.NEVER;
  });

export const changeMoneyInput = z.object({
  revision: revisionField,
  reason: textField(1000),
  currency: currencyField,
  /** What an hour of work counts for, in main units; blank: work stays in minutes. */
  labourPerHour: optionalMoneyField(),
});
