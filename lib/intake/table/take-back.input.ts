import { z } from 'zod';
import { idField } from '@/lib/records/fields/id-field';
import { textField } from '@/lib/records/fields/text-field';

export const takeBackInput = z.object({ id: idField, reason: textField(1000) });
