import { z } from 'zod';
import { mayTake, scriptShapes } from './script-shape';

const address = z.email();
const longest = 254;

/** An e-mail address in lower case that may be left out; blank is null. */
export const optionalEmailField = z
  .unknown()
  .optional()
  .transform((raw, context): string | null => {
    const text = typeof raw === 'string' ? raw.trim().toLowerCase() : '';
    if (text === '') return null;
    if (text.length <= longest && address.safeParse(text).success) return text;
    context.addIssue({ code: 'custom', message: 'email-invalid' });
    return z.NEVER;
  })
  .register(scriptShapes, mayTake({ json: address }));
