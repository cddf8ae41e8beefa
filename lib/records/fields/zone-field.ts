import { z } from 'zod';
import { alwaysTakes, scriptShapes } from './script-shape';

/** An IANA time zone that this machine knows, for instance 'America/Chicago'. */
export const zoneField = z
  .unknown()
  .optional()
  .transform((raw, context): string => {
    const text = typeof raw === 'string' ? raw.trim() : '';
    if (text === '') {
      context.addIssue({ code: 'custom', message: 'missing' });
      return z.NEVER;
    }
    try {
      return new Intl.DateTimeFormat('en', { timeZone: text }).resolvedOptions().timeZone;
    } catch {
      context.addIssue({ code: 'custom', message: 'not-an-option' });
      return z.NEVER;
    }
  })
  .register(scriptShapes, alwaysTakes({ json: z.string() }));
