import { z } from 'zod';
import { leaveWordField } from '@/lib/access/leave-word';
import { choiceField } from '../fields/choice-field';
import { idField } from '../fields/id-field';
import { textField } from '../fields/text-field';

/** What becomes of the records of a site that leaves: counted on in the network's sums, or taken out of them. */
export const leftFigures = ['counted', 'withdrawn'] as const;

export const leaveSiteInput = z.object({
  id: idField,
  figures: choiceField(leftFigures),
  reason: textField(1000),
  word: leaveWordField,
});
