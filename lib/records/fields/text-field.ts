import { z } from 'zod';
import { alwaysTakes, mayTake, scriptShapes } from './script-shape';

// Control characters other than tab and line breaks, and the marks that reverse the reading direction.
const unwanted = /[\p{Cc}\u202A-\u202E\u2066-\u2069]/u;

function checked(text: string, longest: number, context: z.RefinementCtx): string {
  if (text.length > longest)
    context.addIssue({ code: 'custom', message: 'too-long', params: { max: longest } });
  else if (unwanted.test(text.replace(/[\t\r\n]/g, '')))
    context.addIssue({ code: 'custom', message: 'control-characters' });
  return text;
}

/** A text that must be given. */
export function textField(longest = 200) {
  return z
    .unknown()
    .optional()
    .transform((raw, context): string => {
      const text = typeof raw === 'string' ? raw.trim().toWellFormed() : '';
      if (text === '') {
        context.addIssue({ code: 'custom', message: 'missing' });
        return z.NEVER;
      }
      return checked(text, longest, context);
    })
    .register(scriptShapes, alwaysTakes({ json: z.string().max(longest) }));
}

/** A text that may be left out; blank is null. */
export function optionalTextField(longest = 2000) {
  return z
    .unknown()
    .optional()
    .transform((raw, context): string | null => {
      const text = typeof raw === 'string' ? raw.trim().toWellFormed() : '';
      return text === '' ? null : checked(text, longest, context);
    })
    .register(scriptShapes, mayTake({ json: z.string().max(longest) }));
}
