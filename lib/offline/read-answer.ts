import type { EntryAnswer } from './entry';

const kinds = ['saved', 'refused', 'asked', 'conflict'] as const;

const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const texts = (value: unknown, ...names: readonly string[]): boolean =>
  Array.isArray(value) &&
  value.every((row) => isObject(row) && names.every((name) => typeof row[name] === 'string'));

/**
 * The server's answer in the body of a response; undefined for anything else, such as the page that a network
 * without internet puts in the place of every answer. Written by hand since it runs on the phone.
 */
export function readAnswer(body: unknown): EntryAnswer | undefined {
  if (!isObject(body) || !kinds.some((kind) => kind === body.kind)) return undefined;
  const whole =
    body.kind === 'saved'
      ? typeof body.recordId === 'string' &&
        typeof body.revision === 'number' &&
        typeof body.savedAt === 'string'
      : body.kind === 'refused'
        ? texts(body.errors, 'field', 'text')
        : body.kind === 'asked'
          ? texts(body.questions, 'code', 'text')
          : typeof body.revision === 'number' && texts(body.fields, 'label', 'theirs', 'yours');
  return whole ? (body as EntryAnswer) : undefined;
}
