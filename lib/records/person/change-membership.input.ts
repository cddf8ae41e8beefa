import { z } from 'zod';
import { choiceField } from '../fields/choice-field';
import { idField, idListField } from '../fields/id-field';
import { revisionField } from '../fields/revision-field';
import { textField } from '../fields/text-field';
import { memberRoles } from './invite-person.input';

/** `state` ended takes the person out of the network at once; their records stay. */
export const changeMembershipInput = z.object({
  id: idField,
  revision: revisionField,
  reason: textField(1000),
  role: choiceField(memberRoles),
  state: choiceField(['active', 'ended']),
  siteIds: idListField,
});
