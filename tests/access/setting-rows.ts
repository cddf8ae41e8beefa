import { readAs } from '@/lib/access/scoped-db';
import { changeMaterial } from '@/lib/records/settings/change-material.command';
import { changeMethod } from '@/lib/records/settings/change-method.command';
import { changeSpecies } from '@/lib/records/settings/change-species.command';
import { changeWindow } from '@/lib/records/settings/change-window.command';
import {
  changeMaterialInput,
  changeMethodInput,
  changeSpeciesInput,
  changeWindowInput,
} from '@/lib/records/settings/settings.input';
import { command, type OperationRow } from './operation-rows';
import type { World } from './world';

const changed = { reason: 'tried', nameEn: 'Name', nameEs: 'Nombre' };

/** Id and revision of a row of the network's settings, as its coordinator reads them. */
async function target({ people }: World, table: 'method' | 'material' | 'species' | 'window') {
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
    }
  });
}

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
      limeTolerant: 'yes',
    }),
  ),
  command('records/settings/change-window.command', 'y----', changeWindowInput, changeWindow, async (w) => ({
    ...changed,
    ...(await target(w, 'window')),
    contaminationDays: 30,
    yieldDays: 95,
  })),
];
