import { z } from 'zod';
import { dateField } from '@/lib/records/fields/date-field';
import { idField, optionalIdField } from '@/lib/records/fields/id-field';
import { optionalTextField, textField } from '@/lib/records/fields/text-field';

/** The box that says that everybody told of or seen has agreed. */
const agreed = z
  .unknown()
  .optional()
  .transform((raw, context): true => {
    if (raw === 'yes' || raw === true || (Array.isArray(raw) && raw.includes('yes'))) return true;
    context.addIssue({ code: 'custom', message: 'consent-missing' });
    return z.NEVER;
  });

export const addStoryInput = z.object({
  id: optionalIdField,
  reportId: idField,
  title: textField(120),
  words: textField(1500),
  photoId: optionalIdField,
  pictureAlt: optionalTextField(200),
  consent: agreed,
  consentOn: dateField,
});

export const dropStoryInput = z.object({ id: idField });
