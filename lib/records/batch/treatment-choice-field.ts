import { z } from 'zod';
import { alwaysTakes, scriptShapes } from '../fields/script-shape';

/** How a component was treated: in a recorded run, which says the method, or by a method without a recorded run. */
export type TreatmentChoice = { readonly kind: 'run' | 'method'; readonly id: string };

const uuid = z.uuid();

/** Posted as `run:<id>` or `method:<id>`, so that one list offers both. */
export const treatmentChoiceField = z
  .unknown()
  .optional()
  .transform((raw, context): TreatmentChoice => {
    if (raw === undefined || raw === null || raw === '') {
      context.addIssue({ code: 'custom', message: 'missing' });
      return z.NEVER;
    }
    const [kind, id] = typeof raw === 'string' ? raw.split(':') : [];
    const parsed = uuid.safeParse(id);
    if (parsed.success && (kind === 'run' || kind === 'method'))
      return { kind, id: parsed.data.toLowerCase() };
    context.addIssue({ code: 'custom', message: 'not-an-option' });
    return z.NEVER;
  })
  .register(scriptShapes, alwaysTakes({ json: z.string().regex(/^(run|method):[0-9a-f-]{36}$/) }));
