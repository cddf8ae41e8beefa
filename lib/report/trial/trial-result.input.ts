import { z } from 'zod';
import { idField } from '@/lib/records/fields/id-field';

export const trialResultInput = z.object({ id: idField });
