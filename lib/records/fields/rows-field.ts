import { z } from 'zod';
import { mayTake, scriptShapes } from './script-shape';

/** Blank: nothing but empty text (and units and choices preselected beside it) was given in the row. */
export type RowIsBlank = (row: Readonly<Record<string, unknown>>) => boolean;

export function isBlank(value: unknown): boolean {
  if (value === undefined || value === null) return true;
  if (typeof value === 'string') return value.trim() === '';
  if (typeof value !== 'object') return false;
  const { text } = value as { text?: unknown };
  return text === undefined ? Object.values(value).every(isBlank) : isBlank(text);
}

function rowsOf(raw: unknown): [string, unknown][] | undefined {
  if (raw === undefined || raw === null || raw === '') return [];
  if (typeof raw !== 'object') return undefined;
  const rows = Object.entries(raw).filter(([key]) => /^\d{1,3}$/.test(key));
  return rows.sort(([first], [second]) => Number(first) - Number(second));
}

/**
 * Rows of a form, posted by number (`components.0.grams`), or a list from a script. Blank rows are dropped;
 * errors keep the number of the row as it was posted.
 */
export function rowsField<S extends z.ZodType>(row: S, most: number, blank: RowIsBlank) {
  return z
    .unknown()
    .optional()
    .transform((raw, context): z.output<S>[] => {
      const posted = rowsOf(raw);
      if (posted === undefined) {
        context.addIssue({ code: 'custom', message: 'not-an-option' });
        return z.NEVER;
      }
      const given = posted.filter(([, value]) => !blank((value ?? {}) as Record<string, unknown>));
      if (given.length > most) {
        context.addIssue({ code: 'custom', message: 'too-many-rows', params: { max: most } });
        return z.NEVER;
      }
      const rows: z.output<S>[] = [];
      for (const [index, value] of given) {
        const parsed = row.safeParse(value);
        if (parsed.success) rows.push(parsed.data);
        else for (const issue of parsed.error.issues) passOn(index, issue, context);
      }
      return rows;
    })
    .register(scriptShapes, mayTake({ rows: row, most }));
}

function passOn(index: string, issue: z.core.$ZodIssue, context: z.RefinementCtx) {
  const params = issue.code === 'custom' ? issue.params : undefined;
  context.addIssue({
    code: 'custom',
    message: issue.message,
    path: [index, ...issue.path],
    ...(params ? { params } : {}),
  });
}
