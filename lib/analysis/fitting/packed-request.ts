import type { FixedTerm, RandomTerm } from '../../stats/mixed/design/fixed-term';
import type { FitQuestions, FitRequest } from './fit-request';
import { type PackedLabels, packLabels, unpackLabels } from './packed-labels';

type Packed<Term> = Term extends { readonly values: readonly string[] }
  ? Omit<Term, 'values'> & { readonly values: PackedLabels }
  : Term;

type WithPackedTerms<Input> = Omit<Input, 'fixed' | 'random'> & {
  readonly fixed: readonly Packed<FixedTerm>[];
  readonly random: readonly Packed<RandomTerm>[];
};

type InputOf<Kind> = Extract<FitRequest, { readonly kind: Kind }>['input'];

/** A request as it goes to a thread: a million labels of rows would take longer to copy, and more room, than what they say. */
export type PackedRequest = FitQuestions &
  (
    | { readonly kind: 'linear'; readonly input: WithPackedTerms<InputOf<'linear'>> }
    | { readonly kind: 'binomial'; readonly input: WithPackedTerms<InputOf<'binomial'>> }
  );

export function packRequest(request: FitRequest): PackedRequest {
  const terms = {
    fixed: request.input.fixed.map(packFixed),
    random: request.input.random.map((term) => ({ ...term, values: packLabels(term.values) })),
  };
  return request.kind === 'linear'
    ? { ...request, input: { ...request.input, ...terms, response: numbers(request.input.response) } }
    : {
        ...request,
        input: {
          ...request.input,
          ...terms,
          events: numbers(request.input.events),
          trials: numbers(request.input.trials),
        },
      };
}

export function unpackRequest(packed: PackedRequest): FitRequest {
  const terms = {
    fixed: packed.input.fixed.map(unpackFixed),
    random: packed.input.random.map((term) => ({ ...term, values: unpackLabels(term.values) })),
  };
  return packed.kind === 'linear'
    ? { ...packed, input: { ...packed.input, ...terms } }
    : { ...packed, input: { ...packed.input, ...terms } };
}

const numbers = (values: ArrayLike<number>) =>
  ArrayBuffer.isView(values) ? values : Float64Array.from(values);

function packFixed(term: FixedTerm): Packed<FixedTerm> {
  if (term.kind === 'factor') return { ...term, values: packLabels(term.values) };
  return term.kind === 'covariate' ? { ...term, values: numbers(term.values) } : term;
}

function unpackFixed(term: Packed<FixedTerm>): FixedTerm {
  return term.kind === 'factor' ? { ...term, values: unpackLabels(term.values) } : term;
}
