import type { z } from 'zod';
import type { ProblemError } from './answer';

const expected: Readonly<Record<string, string>> = {
  string: 'json-text',
  number: 'json-number',
  int: 'json-whole',
  boolean: 'json-true-or-false',
  array: 'json-list',
  object: 'json-object',
};

function codeOf(issue: z.core.$ZodIssue): Pick<ProblemError, 'code' | 'values'> {
  switch (issue.code) {
    case 'invalid_type':
      if (issue.input === undefined && issue.message.includes('undefined')) return { code: 'missing' };
      return { code: expected[issue.expected] ?? 'not-an-option' };
    case 'too_big':
      return issue.origin === 'string' || issue.origin === 'array'
        ? {
            code: issue.origin === 'string' ? 'too-long' : 'too-many-rows',
            values: { max: Number(issue.maximum) },
          }
        : { code: 'too-large', values: { max: String(issue.maximum) } };
    case 'too_small':
      return { code: 'too-small', values: { min: String(issue.minimum) } };
    case 'invalid_format':
      return { code: ['date', 'datetime'].includes(issue.format) ? `json-${issue.format}` : 'json-form' };
    case 'unrecognized_keys':
      return { code: 'api-unknown-field' };
    default:
      return { code: 'not-an-option' };
  }
}

const escaped = (part: PropertyKey) => String(part).replaceAll('~', '~0').replaceAll('/', '~1');

/** What is wrong with the shape of what was sent, each problem with its JSON pointer (RFC 6901); the first of each place. */
export function sentProblems(error: z.ZodError): readonly ProblemError[] {
  const found = new Map<string, ProblemError>();
  for (const issue of error.issues) {
    const { code, values } = codeOf(issue);
    const tails = issue.code === 'unrecognized_keys' ? issue.keys.map((key) => [key]) : [[]];
    for (const tail of tails) {
      const path = [...issue.path, ...tail];
      const pointer = path.map((part) => `/${escaped(part)}`).join('');
      const field = path.map(String).join('.');
      if (!found.has(pointer))
        found.set(pointer, { field, pointer, code, ...(values === undefined ? {} : { values }) });
    }
  }
  return [...found.values()];
}
