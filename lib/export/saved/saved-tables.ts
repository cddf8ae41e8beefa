import type { SavedTable } from './saved-table';
import { batches } from './tables/batches';
import { checks } from './tables/checks';
import { conditions } from './tables/conditions';
import { findings } from './tables/findings';
import { harvests } from './tables/harvests';
import { looks } from './tables/looks';
import { losses } from './tables/losses';
import { sites } from './tables/sites';
import { spawnLots } from './tables/spawn-lots';
import { substrateLots } from './tables/substrate-lots';
import { treatmentReadings } from './tables/treatment-readings';
import { treatments } from './tables/treatments';
import { weighings } from './tables/weighings';

/** Every table that can be saved, by its name in the address. */
export const savedTables = {
  batches,
  findings,
  looks,
  losses,
  checks,
  weighings,
  harvests,
  treatments,
  'treatment-readings': treatmentReadings,
  'substrate-lots': substrateLots,
  'spawn-lots': spawnLots,
  sites,
  conditions,
} as const satisfies Record<string, SavedTable>;

export type SavedTableName = keyof typeof savedTables;

export function isSavedTable(name: string): name is SavedTableName {
  return Object.hasOwn(savedTables, name);
}
