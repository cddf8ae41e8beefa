import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { addDays } from '@/lib/growing/calendar-date';
import type { ContainerKind } from '@/lib/growing/vocabulary';
import { daysShown, readComparisonChoices } from '../comparison/comparison-choices';
import { judgeBatches } from '../comparison/judged-batch';
import { readBatchRows } from '../comparison/read-batch-rows';
import { usualRuns } from './usual-runs';

/** How runs usually go, by the network's own records: what a plan's size can rest on. */
export type UsualRuns = ReturnType<typeof usualRuns> & {
  readonly speciesId: string;
  readonly species: { readonly en: string; readonly es: string };
  readonly container: ContainerKind;
};

/** The last two years of the species and container used most; undefined while there is no batch. */
export async function readUsualRuns(context: ReadContext, now: Date): Promise<UsualRuns | undefined> {
  const { defaults, today, species } = await readComparisonChoices(context, now);
  const named = species.find(({ id }) => id === defaults?.species);
  if (defaults === undefined || named === undefined) return undefined;
  const rows = await readBatchRows(context, { ...defaults, from: addDays(defaults.to, -daysShown) });
  return {
    ...usualRuns(judgeBatches(rows, today)),
    speciesId: named.id,
    species: { en: named.en, es: named.es },
    container: defaults.container,
  };
}
