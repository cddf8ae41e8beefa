import type { Route } from 'next';
import type { SumSpec } from '../sums/sum-spec';

/** One choice of a field; `hint` is a second, quieter line, `picture` the address of what is chosen. */
export type ChoiceOption = {
  readonly value: string;
  readonly label: string;
  readonly hint?: string;
  readonly picture?: string;
};

type Named = {
  /** Dotted name as posted, for instance `lines.0.fresh`. */
  readonly name: string;
  readonly label: string;
  readonly hint?: string;
  readonly optional?: boolean;
};

/**
 * A field of a form in words already translated. The form posts strings:
 * `mass`, `length`, `volume`, `temperature`, `area` post `name` and `name__unit`; `date` posts `name__quick`
 * (an ISO date or 'other'), `name__day`, `name__month`, `name__year`; `moment` posts the same and `name__time`;
 * `several` posts `name` once per ticked box.
 */
export type FieldSpec =
  | (Named & { readonly kind: 'text'; readonly width?: 'short' | 'long'; readonly autoComplete?: string })
  | (Named & { readonly kind: 'email' | 'password'; readonly autoComplete: string })
  | (Named & { readonly kind: 'paragraph' })
  | (Named & { readonly kind: 'whole'; readonly suffix?: string })
  | (Named & { readonly kind: 'decimal'; readonly suffix?: string })
  | (Named & {
      readonly kind: 'mass' | 'length' | 'volume' | 'temperature' | 'area';
      readonly units: readonly ChoiceOption[];
    })
  | (Named & { readonly kind: 'date'; readonly quick: readonly ChoiceOption[] })
  | (Named & { readonly kind: 'moment'; readonly quick: readonly ChoiceOption[] })
  | (Named & {
      readonly kind: 'select';
      readonly options: readonly ChoiceOption[];
      readonly emptyLabel?: string;
      /** The way to what could be chosen besides, and what it costs to go there. */
      readonly notListed?: { readonly href: Route; readonly text: string; readonly note: string };
    })
  | (Named & { readonly kind: 'radio'; readonly options: readonly ChoiceOption[] })
  | (Named & { readonly kind: 'several'; readonly options: readonly ChoiceOption[] })
  | { readonly kind: 'hidden'; readonly name: string }
  | {
      readonly kind: 'caution';
      readonly name: string;
      readonly title: string;
      readonly lines: readonly string[];
    }
  | { readonly kind: 'prose'; readonly name: string; readonly text: string }
  | { readonly kind: 'link'; readonly name: string; readonly href: string; readonly text: string }
  | { readonly kind: 'sums'; readonly name: string; readonly sums: SumSpec }
  | {
      readonly kind: 'group';
      readonly name: string;
      readonly legend: string;
      readonly hint?: string;
      readonly fields: readonly FieldSpec[];
      /** Rarely needed fields stay folded (a `details` element) until opened or in error. */
      readonly folded?: boolean;
    };

/** What a form shows: the strings typed, the errors and questions in words. */
export type FormState = {
  readonly values: Readonly<Record<string, string | readonly string[]>>;
  readonly errors: readonly { readonly field: string; readonly text: string }[];
  readonly questions: readonly { readonly code: string; readonly text: string }[];
  /** A sentence about the whole form, such as "Somebody else changed this". */
  readonly notice?: string;
  /** What is shown this once under the notice, such as a link; one press chooses all of it. */
  readonly shownOnce?: string;
  /** Somebody else saved first: one sentence that says who and when. Sending again saves over theirs. */
  readonly conflict?: string;
};

export const emptyFormState: FormState = { values: {}, errors: [], questions: [] };
