import { z } from 'zod';
import { choiceField } from '../fields/choice-field';
import { optionalTextField } from '../fields/text-field';

/** What can be said to a signal; `open` takes an answer back. */
export const signalAnswers = ['seen', 'explained', 'open'] as const;

/** The key of a signal: what kind, and ids and days of what it is about. */
export const signalKey = z
  .string('missing')
  .max(200, 'not-an-option')
  .regex(/^[a-z]+(:[a-z0-9_-]+)+$/, 'not-an-option');

export const answerSignalInput = z
  .object({
    signalKey,
    answer: choiceField(signalAnswers),
    words: optionalTextField(1000),
  })
  .refine(({ answer, words }) => answer !== 'explained' || words !== null, {
    path: ['words'],
    message: 'missing',
  });
