import { z } from 'zod';
import { choiceField } from '../fields/choice-field';
import { idField } from '../fields/id-field';
import { optionalTextField } from '../fields/text-field';

/** What a site may let others see: its name, that it is one of the sites, or nothing. */
export const sharingLevels = ['named', 'anonymous', 'not_at_all'] as const;

export type SharingLevel = (typeof sharingLevels)[number];

/** `id`: the site. `revision`: how often the agreement had been changed when it was shown; 0 while nobody has said anything. */
export const agreeSharingInput = z.object({
  id: idField,
  revision: z.coerce.number('missing').int('not-whole').nonnegative('not-whole'),
  withMembers: choiceField(sharingLevels),
  withFunder: choiceField(sharingLevels),
  /** Kept in the history; a site owes nobody a reason. */
  reason: optionalTextField(1000),
});
