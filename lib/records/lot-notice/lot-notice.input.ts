import { z } from 'zod';
import { choiceField } from '../fields/choice-field';
import { idField, idListField, optionalIdField } from '../fields/id-field';
import { revisionField } from '../fields/revision-field';
import { textField } from '../fields/text-field';

/** What a notice can be about, by the names that lots have in addresses. */
export const noticedKinds = ['spawn-lot', 'substrate-lot'] as const;
export type NoticedKind = (typeof noticedKinds)[number];

export const writeNoticeInput = z.object({
  id: optionalIdField,
  lotKind: choiceField(noticedKinds),
  lotId: idField,
  whatHappened: textField(1000),
  whatToDo: textField(1000),
  siteIds: idListField,
});

export const withdrawNoticeInput = z.object({
  id: idField,
  revision: revisionField,
  reason: textField(1000),
});

export const markNoticeReadInput = z.object({ noticeId: idField });
