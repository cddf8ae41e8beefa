import type { Actor } from '@/lib/access/actor';
import type { FieldError, Question } from '@/lib/base/result';

/** What a refusal is about: a place in the body, a parameter of the address, or a header. */
export type ProblemError = FieldError & {
  readonly pointer?: string;
  readonly parameter?: string;
  readonly header?: string;
};

export type Problem = {
  readonly status: number;
  /** Last part of the problem's type; stable. */
  readonly slug: ProblemSlug;
  /** Whose labels name the fields. */
  readonly area: string;
  readonly errors: readonly ProblemError[];
  readonly questions: readonly (Question & { readonly pointer: string })[];
  readonly headers: Readonly<Record<string, string>>;
};

export const problemSlugs = {
  unreadable: 400,
  'token-needed': 401,
  'not-allowed': 403,
  'not-there': 404,
  'wrong-method': 405,
  'not-acceptable': 406,
  questions: 409,
  changed: 412,
  'too-large': 413,
  'not-json': 415,
  refused: 422,
  'key-reused': 422,
  'revision-needed': 428,
  'too-many': 429,
  busy: 503,
} as const;
export type ProblemSlug = keyof typeof problemSlugs;

export type ApiAnswer =
  | {
      readonly kind: 'told';
      readonly status: 200 | 201 | 202;
      readonly body: unknown;
      readonly headers: Readonly<Record<string, string>>;
    }
  | { readonly kind: 'unchanged'; readonly headers: Readonly<Record<string, string>> }
  | { readonly kind: 'problem'; readonly problem: Problem };

/** What the handler is told: the answer, and who asked if that is known. */
export type Answered = { readonly answer: ApiAnswer; readonly actor: Actor | undefined };

/** A refusal that no command made, by the code of its sentence. */
export function refusal(
  slug: ProblemSlug,
  error: (Omit<ProblemError, 'field'> & { readonly field?: string }) | undefined,
  headers: Readonly<Record<string, string>> = {},
): ApiAnswer {
  const errors = error === undefined ? [] : [{ field: '', ...error }];
  return {
    kind: 'problem',
    problem: { status: problemSlugs[slug], slug, area: 'common', errors, questions: [], headers },
  };
}
