import type { Failure } from '@/lib/base/result';
import type { Operation } from '../operation/operation';
import { type ApiAnswer, type ProblemSlug, problemSlugs, refusal } from './answer';
import { tagOf } from './entity-tag';

/** What a command answered other than ok, as a problem that names where in the body it is. */
export function failureAnswer(operation: Operation, failure: Failure): ApiAnswer {
  const pointerOf = (field: string) => ('body' in operation ? operation.body.pointerOf(field) : '');
  const { area } = operation;
  const problem = (slug: ProblemSlug, more: Partial<Extract<ApiAnswer, { kind: 'problem' }>['problem']>) =>
    ({
      kind: 'problem',
      problem: {
        ...{ status: problemSlugs[slug], slug, area, errors: [], questions: [], headers: {} },
        ...more,
      },
    }) satisfies ApiAnswer;
  switch (failure.kind) {
    case 'not-found':
      return refusal('not-there', { code: 'api-not-there' });
    case 'confirm':
      return problem('questions', {
        questions: failure.questions.map((question) => ({ ...question, pointer: pointerOf(question.field) })),
      });
    case 'conflict':
      return problem('changed', {
        errors: [
          { field: '', code: 'api-changed', header: 'If-Match', values: { revision: failure.current } },
        ],
        headers: { etag: tagOf(failure.current) },
      });
    case 'invalid': {
      const [first] = failure.errors;
      if (first?.code === 'try-again') return refusal('busy', { code: 'try-again' }, { 'retry-after': '1' });
      if (first?.code === 'api-key-reused')
        return refusal('key-reused', { code: 'api-key-reused', header: 'Idempotency-Key' });
      return problem('refused', {
        errors: failure.errors.map((error) => ({ ...error, pointer: pointerOf(error.field) })),
      });
    }
  }
}
