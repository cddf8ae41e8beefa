import { z } from 'zod';
import { choiceField } from '../fields/choice-field';
import { optionalEmailField } from '../fields/email-field';
import { idListField } from '../fields/id-field';
import { optionalTextField } from '../fields/text-field';

export const memberRoles = ['coordinator', 'member', 'funder'] as const;

export const invitePersonInput = z.object({
  role: choiceField(memberRoles),
  siteIds: idListField,
  forName: optionalTextField(120),
  /** By which somebody is known who is here or invited already; nothing is sent there. */
  forEmail: optionalEmailField,
});
