import { z } from 'zod';
import { alwaysTakes, mayTake, scriptShapes } from './script-shape';

/** One of a closed list. */
export function choiceField<const V extends readonly string[]>(values: V) {
  return z
    .unknown()
    .optional()
    .transform((raw, context): V[number] => {
      if (typeof raw === 'string' && (values as readonly string[]).includes(raw)) return raw as V[number];
      context.addIssue({
        code: 'custom',
        message: raw === undefined || raw === null || raw === '' ? 'missing-choice' : 'not-an-option',
      });
      return z.NEVER;
    })
    .register(scriptShapes, alwaysTakes({ json: z.enum(values) }));
}

/** One of a closed list, or null when left out. */
export function optionalChoiceField<const V extends readonly string[]>(values: V) {
  return z
    .unknown()
    .optional()
    .transform((raw, context): V[number] | null => {
      if (raw === undefined || raw === null || raw === '') return null;
      if (typeof raw === 'string' && (values as readonly string[]).includes(raw)) return raw as V[number];
      context.addIssue({ code: 'custom', message: 'not-an-option' });
      return z.NEVER;
    })
    .register(scriptShapes, mayTake({ json: z.enum(values) }));
}
