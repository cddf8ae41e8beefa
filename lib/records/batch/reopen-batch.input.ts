import { z } from 'zod';
import { idField } from '../fields/id-field';
import { revisionField } from '../fields/revision-field';
import { textField } from '../fields/text-field';

export const reopenBatchInput = z.object({ id: idField, revision: revisionField, reason: textField(1000) });
