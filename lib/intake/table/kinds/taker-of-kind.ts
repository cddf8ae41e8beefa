import 'server-only';
import type { RecordTableKind } from '@/lib/growing/record-table-layout';
import type { Taker, TakeSettings } from '../taker';
import { takeBatches } from './take-batches';
import { takeFindings } from './take-findings';
import { takeHarvests } from './take-harvests';
import { takeSpawnLots, takeSubstrateLots } from './take-lots';
import { takeNotebook } from './take-notebook';
import { takePeople } from './take-people';
import { takeSites } from './take-sites';
import { takeTreatments } from './take-treatments';

/** How the rows of each kind of table become records. */
export const takerOfKind: Readonly<Record<RecordTableKind, (settings: TakeSettings) => Taker>> = {
  harvests: takeHarvests,
  batches: takeBatches,
  treatments: takeTreatments,
  notebook: takeNotebook,
  findings: takeFindings,
  spawn_lots: takeSpawnLots,
  substrate_lots: takeSubstrateLots,
  sites: takeSites,
  people: takePeople,
};
