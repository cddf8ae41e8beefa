import { type BatchRowsBounds, type BatchRowsWanted, boundsOf } from '../comparison/read-batch-rows';

/** Which outcomes are added up: of one kind of container, and of one method where one is named. */
export type OutcomesWanted = BatchRowsWanted & {
  readonly container: string;
  readonly method?: string | undefined;
};

/** The same with every choice as the statements take it: null narrows nothing. */
export function outcomeBounds(wanted: OutcomesWanted): BatchRowsBounds & { readonly method: string | null } {
  return { ...boundsOf(wanted), method: wanted.method ?? null };
}
