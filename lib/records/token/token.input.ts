import { z } from 'zod';
import { choiceField } from '../fields/choice-field';
import { optionalDateField } from '../fields/date-field';
import { idField, idListField } from '../fields/id-field';
import { revisionField } from '../fields/revision-field';
import { textField } from '../fields/text-field';

export const tokenScopes = ['read', 'write'] as const;

export const makeTokenInput = z.object({
  name: textField(80),
  /** `write` reads, too. */
  scope: choiceField(tokenScopes),
  /** None: all sites that the person may see, also those still to come. */
  siteIds: idListField,
  /** The last day on which it works, by the network's zone; left out: until it is withdrawn. */
  worksUntil: optionalDateField,
});

export const withdrawTokenInput = z.object({
  id: idField,
  revision: revisionField,
  reason: textField(1000),
});
