import { z } from 'zod';
import { choiceField } from '../fields/choice-field';
import { idField } from '../fields/id-field';
import { revisionField } from '../fields/revision-field';
import { textField } from '../fields/text-field';

/** What can be voided, by the name it has in addresses. */
export const voidableKinds = [
  'batch',
  'weighing',
  'finding',
  'finding-follow-up',
  'look',
  'loss',
  'check',
  'treatment-run',
  'treatment-reading',
  'substrate-lot',
  'substrate-receipt',
  'spawn-lot',
  'spawn-receipt',
  'bed-layer',
  'photo',
  'label-sheet',
  'condition-place',
  'condition-import',
  'condition-reading',
  'placement',
  'participant',
  'training',
  'sale',
  'practice',
  'trial',
  'site',
] as const;
export type VoidableKind = (typeof voidableKinds)[number];

/** Which record, as the address of its page names it. */
export const voidableInput = z.object({ kind: choiceField(voidableKinds), id: idField });

export const voidRecordInput = z.object({
  kind: choiceField(voidableKinds),
  id: idField,
  revision: revisionField,
  reason: textField(1000),
});
