import type { SumFacts, SumReader, SumWords } from './sum-input';
import type { SumKind } from './work-out';

/** Where the answer of a sum can be taken to. */
export type SumTarget = { readonly path: string; readonly label: string };

/** Sums shown beside the fields of a form that they read, in words already translated. */
export type SumSpec = {
  readonly kinds: readonly SumKind[];
  readonly heading: string;
  readonly words: SumWords;
  readonly reader: SumReader;
  /** What the records say about the choices; null for sums of typed numbers only. */
  readonly facts: SumFacts | null;
  /** Label of the button that works it out without script. */
  readonly workOut: string;
  readonly carryTo?: SumTarget;
};
