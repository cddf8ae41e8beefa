import type { EntryAnswer } from '@/lib/offline/entry';

/** The body of a refusal as RFC 9457 has it, with the answer to the entry beside its own members. */
export type ProblemDetails = {
  readonly type: string;
  readonly title: string;
  readonly status: number;
  readonly detail: string;
} & Exclude<EntryAnswer, { kind: 'saved' }>;

const slugs: Readonly<Record<number, string>> = {
  400: 'unreadable',
  401: 'sign-in',
  403: 'other-account',
  404: 'not-there',
  409: 'questions',
  412: 'conflict',
  413: 'too-large',
  415: 'not-json',
  422: 'refused',
  429: 'too-many',
  503: 'busy',
};

function sentences(answer: Exclude<EntryAnswer, { kind: 'saved' }>): string {
  if (answer.kind === 'refused') return answer.errors.map(({ text }) => text).join('. ');
  if (answer.kind === 'asked') return answer.questions.map(({ text }) => text).join(' ');
  return answer.fields.map(({ label, theirs, yours }) => `${label}: ${theirs} / ${yours}`).join('; ');
}

/** `title` is what all problems of a status have in common, in the reader's language. */
export function problemDetails(
  status: number,
  title: string,
  answer: Exclude<EntryAnswer, { kind: 'saved' }>,
): ProblemDetails {
  const type = `tag:pinset,2026:problem/${slugs[status] ?? 'other'}`;
  return { type, title, status, detail: sentences(answer), ...answer };
}
