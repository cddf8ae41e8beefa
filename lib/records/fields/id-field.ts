import { z } from 'zod';
import { alwaysTakes, mayTake, scriptShapes } from './script-shape';

const uuid = z.uuid();

/** Whether the last part of an address can be the id of a record. */
export function isId(text: string): boolean {
  return uuid.safeParse(text).success;
}

/** The id of a record that must be chosen. */
export const idField = z
  .unknown()
  .optional()
  .transform((raw, context): string => {
    const parsed = uuid.safeParse(raw);
    if (parsed.success) return parsed.data.toLowerCase();
    context.addIssue({
      code: 'custom',
      message: raw === undefined || raw === null || raw === '' ? 'missing-choice' : 'not-an-option',
    });
    return z.NEVER;
  })
  .register(scriptShapes, alwaysTakes({ json: uuid }));

/** The id of a record that may be left out; also the id that a client made for a new record. */
export const optionalIdField = z
  .unknown()
  .optional()
  .transform((raw, context): string | null => {
    if (raw === undefined || raw === null || raw === '') return null;
    const parsed = uuid.safeParse(raw);
    if (parsed.success) return parsed.data.toLowerCase();
    context.addIssue({ code: 'custom', message: 'not-an-option' });
    return z.NEVER;
  })
  .register(scriptShapes, mayTake({ json: uuid }));

/** Ids ticked in a list of boxes: none, one or many. */
export const idListField = z
  .unknown()
  .optional()
  .transform((raw, context): string[] => {
    const list = raw === undefined || raw === null || raw === '' ? [] : Array.isArray(raw) ? raw : [raw];
    const parsed = z.array(uuid).safeParse(list);
    if (parsed.success) return parsed.data.map((id) => id.toLowerCase());
    context.addIssue({ code: 'custom', message: 'not-an-option' });
    return z.NEVER;
  })
  .register(scriptShapes, mayTake({ json: z.array(uuid) }));
