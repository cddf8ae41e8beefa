import { z } from 'zod';
import { idField } from '@/lib/records/fields/id-field';

export const reviseReportInput = z.object({ id: idField });
