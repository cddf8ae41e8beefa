import { readAs } from '@/lib/access/scoped-db';
import { addSuitability } from '@/lib/records/settings/add-suitability.command';
import { changeMaterial } from '@/lib/records/settings/change-material.command';
import { changeMethod } from '@/lib/records/settings/change-method.command';
import { changeSpecies } from '@/lib/records/settings/change-species.command';
import { changeSuitability } from '@/lib/records/settings/change-suitability.command';
import { changeWindow } from '@/lib/records/settings/change-window.command';
import {
  addSuitabilityInput,
  changeMaterialInput,
  changeMethodInput,
  changeSpeciesInput,
  changeSuitabilityInput,
  changeWindowInput,
} from '@/lib/records/settings/settings.input';
import { command, type OperationRow } from './operation-rows';
import type { World } from './world';

const changed = { reason: 'tried', nameEn: 'Name', nameEs: 'Nombre' };

/** Id and revision of a row of the network's settings, as its coordinator reads them. */
async function target(
  { people }: World,
  table: 'method' | 'material' | 'species' | 'window' | 'suitability',
) {
  return readAs(people.coordinator, async ({ db }) => {
    const select = { id: true, revision: true } as const;
    const orderBy = { id: 'asc' } as const;
    switch (table) {
      case 'method':
        return db.method.findFirstOrThrow({ select, orderBy });
      case 'material':
        return db.material.findFirstOrThrow({ select, orderBy });
      case 'species':
        return db.species.findFirstOrThrow({ select, orderBy });
      case 'window':
        return db.assessmentWindow.findFirstOrThrow({ select, orderBy });
      case 'suitability':
        return db.suitability.findFirstOrThrow({ select, orderBy });
    }
  });
}

const said = { verdict: 'possible', reasonEn: 'With care.', reasonEs: 'Con cuidado.' };

/** What a network assumes is changed by its coordinator alone. */
export const settingRows: readonly OperationRow[] = [
  command('records/settings/change-method.command', 'y----', changeMethodInput, changeMethod, async (w) => ({
    ...changed,
    ...(await target(w, 'method')),
  })),
  command(
    'records/settings/change-material.command',
    'y----',
    changeMaterialInput,
    changeMaterial,
    async (w) => ({
      ...changed,
      ...(await target(w, 'material')),
    }),
  ),
  command(
    'records/settings/change-species.command',
    'y----',
    changeSpeciesInput,
    changeSpecies,
    async (w) => ({
      ...changed,
      ...(await target(w, 'species')),
    }),
  ),
  command('records/settings/change-window.command', 'y----', changeWindowInput, changeWindow, async (w) => ({
    ...changed,
    ...(await target(w, 'window')),
    contaminationDays: 30,
    yieldDays: 95,
  })),
  command(
    'records/settings/change-suitability.command',
    'y----',
    changeSuitabilityInput,
    changeSuitability,
    async (w) => ({ ...said, ...(await target(w, 'suitability')), reason: 'tried' }),
  ),
  command(
    'records/settings/add-suitability.command',
    'y----',
    addSuitabilityInput,
    addSuitability,
    ({ stock }) => ({ ...said, speciesId: stock.oyster, materialKind: 'other' }),
  ),
];
