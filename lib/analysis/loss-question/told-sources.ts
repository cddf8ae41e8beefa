import type { ModelBatch } from '../adjusted/model-batch';
import { randomTerms, termLabels } from '../adjusted/model-terms';
import type { LossSource, UntoldReason } from './losses-answer';

/** Fewer levels than this say nothing about how much levels differ. Our choice. */
const fewestLevels = 4;

export type AskedSource = {
  readonly source: Exclude<LossSource, 'rest'>;
  /** Recorded levels. */
  readonly levels: number;
  /** Why its share cannot be told; null when it can. */
  readonly untold: { readonly reason: UntoldReason; readonly sameAs: LossSource | null } | null;
};

/** Whether the records can tell what each source does to these batches, before anything is fitted. */
export function toldSources(
  batches: readonly ModelBatch[],
  names: readonly Exclude<LossSource, 'rest'>[],
): AskedSource[] {
  const inModel = new Set(randomTerms(batches, names).map(({ name }) => name));
  return names.map((source): AskedSource => {
    const labels = termLabels(batches, source);
    const recorded = labels.filter((label) => !isUnrecorded(label));
    const levels = new Set(recorded).size;
    const cannot = (reason: UntoldReason, sameAs: LossSource | null = null): AskedSource => ({
      source,
      levels,
      untold: { reason, sameAs },
    });
    if (recorded.length < labels.length / 2) return cannot('not-recorded');
    if (levels < fewestLevels) return cannot('few-levels');
    if (inModel.has(source)) return { source, levels, untold: null };
    if (levels === labels.length) return cannot('each-own');
    return cannot(
      'same-as',
      names.find((other) => other !== source && splitsAlike(labels, termLabels(batches, other))) ?? null,
    );
  });
}

/** A batch without a recorded lot or run is a level of its own, named after the batch. */
export const isUnrecorded = (label: string) => label.startsWith('unknown ') || label.startsWith('batch:');

function splitsAlike(some: readonly string[], others: readonly string[]): boolean {
  const pairs = new Set(some.map((label, row) => `${label}\n${others[row]}`)).size;
  return pairs === new Set(some).size && pairs === new Set(others).size;
}
