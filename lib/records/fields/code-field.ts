import { z } from 'zod';
import { alwaysTakes, mayTake, scriptShapes } from './script-shape';

const codeText = z.string().regex(/^[A-Z0-9][A-Z0-9-]{1,19}$/);

/** A short code in capitals, digits and hyphens, 2-20 characters. */
export const codeField = z
  .unknown()
  .optional()
  .transform((raw, context): string => {
    const text = typeof raw === 'string' ? raw.trim().toUpperCase() : '';
    if (text === '') context.addIssue({ code: 'custom', message: 'missing' });
    else if (!/^[A-Z0-9][A-Z0-9-]{1,19}$/.test(text))
      context.addIssue({ code: 'custom', message: 'code-form' });
    return text;
  })
  .register(scriptShapes, alwaysTakes({ json: codeText }));

/** A code that may be left out: the record then gets one of its own. */
export const optionalCodeField = z
  .unknown()
  .optional()
  .transform((raw, context): string | null => {
    const text = typeof raw === 'string' ? raw.trim().toUpperCase() : '';
    if (text === '') return null;
    if (!/^[A-Z0-9][A-Z0-9-]{1,19}$/.test(text)) context.addIssue({ code: 'custom', message: 'code-form' });
    return text;
  })
  .register(scriptShapes, mayTake({ json: codeText }));
