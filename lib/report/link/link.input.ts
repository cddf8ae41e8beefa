import { z } from 'zod';
import { choiceField } from '@/lib/records/fields/choice-field';
import { dateField } from '@/lib/records/fields/date-field';
import { idField } from '@/lib/records/fields/id-field';
import { textField } from '@/lib/records/fields/text-field';

export const makeLinkInput = z.object({
  reportId: idField,
  forWhom: textField(120),
  language: choiceField(['en', 'es']),
  /** The last day on which the link opens the report. */
  lastDay: dateField,
});

export const withdrawLinkInput = z.object({ id: idField });
