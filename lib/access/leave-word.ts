import { z } from 'zod';

/** What is typed before something is taken away for good, in either language of the forms. */
const leaveWords: readonly string[] = ['leave', 'salir'];

/** The word that says that leaving is meant, in any case; it comes to nothing but its being right. */
export const leaveWordField = z
  .unknown()
  .optional()
  .transform((raw, context): true => {
    const text = typeof raw === 'string' ? raw.trim().toLowerCase() : '';
    if (leaveWords.includes(text)) return true;
    context.addIssue({ code: 'custom', message: text === '' ? 'missing' : 'not-the-word' });
    return z.NEVER;
  });
