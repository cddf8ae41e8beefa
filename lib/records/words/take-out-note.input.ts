import { z } from 'zod';
import { choiceField } from '../fields/choice-field';
import { idField } from '../fields/id-field';
import { revisionField } from '../fields/revision-field';
import { textField } from '../fields/text-field';

/** Records whose note can be taken out by itself, by the name they have in addresses. */
export const notedKinds = ['batch', 'treatment-run'] as const;
export type NotedKind = (typeof notedKinds)[number];

/** Which record, as the address of its page names it. */
export const notedInput = z.object({ kind: choiceField(notedKinds), id: idField });

export const takeOutNoteInput = z.object({
  kind: choiceField(notedKinds),
  id: idField,
  revision: revisionField,
  reason: textField(1000),
});
