import { z } from 'zod';
import { leaveWordField } from '@/lib/access/leave-word';
import { idField } from '../fields/id-field';
import { textField } from '../fields/text-field';

/** `id`: the membership. The reason is kept in the history, and must not name the person. */
export const erasePersonInput = z.object({ id: idField, reason: textField(1000), word: leaveWordField });
