import type { z } from 'zod';
import { readInRegion } from '@/lib/base/reader-region';
import type { FieldError, Result } from '@/lib/base/result';

const code = /^[a-z]+(-[a-z]+)*$/;

/**
 * Parses with an input schema whose messages are error codes; every problem names its field. `region` is the
 * tag by which the reader's numbers are written (see `readerLocale`): it settles what "1.250" means.
 */
export function parseInput<S extends z.ZodType>(
  schema: S,
  raw: unknown,
  region?: string,
): Result<z.output<S>> {
  const parsed = readInRegion(region, () => schema.safeParse(raw));
  if (parsed.success) return { kind: 'ok', value: parsed.data };
  const seen = new Set<string>();
  const errors: FieldError[] = [];
  for (const issue of parsed.error.issues) {
    const field = issue.path.join('.');
    if (seen.has(field)) continue;
    seen.add(field);
    const values = valuesOf(issue);
    const errorCode = code.test(issue.message)
      ? issue.message
      : issue.code === 'unrecognized_keys'
        ? 'unknown-field'
        : 'not-an-option';
    errors.push(values === undefined ? { field, code: errorCode } : { field, code: errorCode, values });
  }
  return { kind: 'invalid', errors };
}

/** The numbers that the sentence of an error needs. */
function valuesOf(issue: z.core.$ZodIssue): FieldError['values'] {
  if (issue.code === 'custom') return issue.params as FieldError['values'];
  if (issue.code === 'too_big') return { max: Number(issue.maximum) };
  if (issue.code === 'too_small') return { min: Number(issue.minimum) };
  return undefined;
}
