/** What is wrong with one field, as a code that the catalogues turn into a sentence naming field and remedy. */
export type FieldError = {
  /** Dotted path of the field as the form names it, for instance `components.0.grams`; '' for the whole form. */
  readonly field: string;
  /** Key under `errors` in the catalogues. */
  readonly code: string;
  readonly values?: Readonly<Record<string, string | number>>;
};

/** Something possible but unlikely: asked about, not refused. Answered by sending its code in `confirmed`. */
export type Question = {
  readonly field: string;
  /** Key under `questions` in the catalogues. */
  readonly code: string;
  readonly values?: Readonly<Record<string, string | number>>;
};

/** The change that came first: by whom, as far as the reader may know, and when, to be told by the network's clock. */
export type LastChange = { readonly by: string | null; readonly at: string; readonly timeZone: string };

export type Failure =
  | { readonly kind: 'invalid'; readonly errors: readonly FieldError[] }
  | { readonly kind: 'confirm'; readonly questions: readonly Question[] }
  /** Not there, or not yours: the two are never told apart. */
  | { readonly kind: 'not-found' }
  /** Somebody else changed the record since it was read; `current` is its present revision. */
  | { readonly kind: 'conflict'; readonly current: number; readonly changed?: LastChange };

export type Result<T> = { readonly kind: 'ok'; readonly value: T } | Failure;

export const notFound: Failure = { kind: 'not-found' };

export function ok<T>(value: T): Result<T> {
  return { kind: 'ok', value };
}

export function invalid(field: string, code: string, values?: FieldError['values']): Failure {
  return { kind: 'invalid', errors: [values === undefined ? { field, code } : { field, code, values }] };
}
