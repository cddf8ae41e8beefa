import { expect } from 'vitest';

type Problem = {
  readonly type: string;
  readonly status: number;
  readonly detail: string;
  readonly errors?: readonly {
    readonly pointer?: string;
    readonly parameter?: string;
    readonly header?: string;
    readonly code: string;
    readonly detail: string;
  }[];
  readonly questions?: readonly { readonly code: string; readonly pointer: string }[];
};

/** An answer as problem details; fails on any other. */
export async function problem(answer: Response): Promise<Problem> {
  expect(answer.headers.get('content-type')).toBe('application/problem+json');
  return (await answer.json()) as Problem;
}
