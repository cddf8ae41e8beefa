import { z } from 'zod';
import { optionalDateField } from '../fields/date-field';
import { idField, optionalIdField } from '../fields/id-field';
import { revisionField } from '../fields/revision-field';
import { textField } from '../fields/text-field';

/** To what a participant may agree: to be counted in reports, to be named, to be shown in a picture. */
export const consentKinds = ['counted', 'named', 'pictured'] as const;
export type ConsentKind = (typeof consentKinds)[number];

const consentsField = z
  .unknown()
  .optional()
  .transform((raw, context): ConsentKind[] => {
    const list = raw === undefined || raw === null || raw === '' ? [] : [raw].flat();
    const parsed = z.array(z.enum(consentKinds)).safeParse(list);
    if (parsed.success) return parsed.data;
    context.addIssue({ code: 'custom', message: 'not-an-option' });
    return z.NEVER;
  });

const participant = {
  name: textField(120),
  /** What holds now; one that is not in it is withdrawn. */
  consents: consentsField,
  /** Day on which those new among them were given. */
  agreedOn: optionalDateField,
};

export const addParticipantInput = z.object({ id: optionalIdField, siteId: idField, ...participant });

export const correctParticipantInput = z.object({
  id: idField,
  revision: revisionField,
  reason: textField(1000),
  ...participant,
});

export const eraseParticipantInput = z.object({
  id: idField,
  revision: revisionField,
  reason: textField(1000),
});
