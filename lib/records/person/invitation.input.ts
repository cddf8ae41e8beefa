import { z } from 'zod';
import { idField } from '../fields/id-field';

export const invitationInput = z.object({ id: idField });
