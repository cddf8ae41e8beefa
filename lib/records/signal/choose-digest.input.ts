import { z } from 'zod';
import { choiceField } from '../fields/choice-field';

export const chooseDigestInput = z.object({ wanted: choiceField(['yes', 'no']) });
