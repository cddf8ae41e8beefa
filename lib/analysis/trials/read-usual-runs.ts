import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { addDays } from '@/lib/growing/calendar-date';
import type { ContainerKind } from '@/lib/growing/vocabulary';
import { daysShown, readComparisonChoices } from '../comparison/comparison-choices';
import { contaminationFigure } from '../comparison/contamination-figure';
import { judgeBatches } from '../comparison/judged-batch';
import { readBatchRows } from '../comparison/read-batch-rows';
import { yieldFigure } from '../comparison/yield-figure';
import type { ShownFigure } from '../shown-figure';
import { type DrawLimits, drawSites } from './draw-sites';
import { usualRuns } from './usual-runs';

/** How runs usually go, by the network's own records: what a plan's size can rest on. */
export type UsualRuns = ReturnType<typeof usualRuns> & {
  readonly speciesId: string;
  readonly species: { readonly en: string; readonly es: string };
  readonly container: ContainerKind;
  /** The percentage lost with its history. */
  readonly loss: ShownFigure;
  /** Which batches the efficiency and its spread rest on, and which not. */
  readonly weighed: Pick<ShownFigure, 'n' | 'leftOut'>;
  /** At so many sites, drawn by lot, out of how many; undefined where every site's batches were read. */
  readonly drawn: { readonly sites: number; readonly of: number } | undefined;
};

/** What can be read while somebody waits, and sites enough to speak for the network. Our choice. */
const mostRead: DrawLimits = { batches: 10_000, fewestSites: 20 };

/**
 * The last two years of the species and container used most; undefined while there is no batch. Where they are more
 * batches than `most`, whole sites are drawn by lot: how alike units of a run are, and how runs of a site vary, is a matter within
 * sites, and the two years keep their seasons, which the latest batches would not.
 */
export async function readUsualRuns(
  context: ReadContext,
  now: Date,
  most: DrawLimits = mostRead,
): Promise<UsualRuns | undefined> {
  const { defaults, today, species } = await readComparisonChoices(context, now);
  const named = species.find(({ id }) => id === defaults?.species);
  if (defaults === undefined || named === undefined) return undefined;
  const { container, to } = defaults;
  const wanted = { container, species: named.id, from: addDays(to, -daysShown), to };
  const drawn = await drawSites(context, wanted, most);
  const sites = drawn === undefined ? {} : { sites: drawn.ids };
  const judged = judgeBatches(await readBatchRows(context, { ...wanted, ...sites }), today);
  // No page shows the batches of drawn sites and of no others.
  const ask = {
    ...({ batches: judged, clusterBy: 'site', asOf: now.toISOString(), rowsQuery: '' } as const),
    pooled: { species: false, materials: true },
  };
  const { n, leftOut } = yieldFigure(ask, container, 'all');
  return {
    ...usualRuns(judged),
    speciesId: named.id,
    species: { en: named.en, es: named.es },
    container,
    loss: contaminationFigure(ask, 'window'),
    weighed: { n, leftOut },
    drawn: drawn && { sites: drawn.ids.length, of: drawn.of },
  };
}
