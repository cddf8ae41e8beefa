import { formToObject } from '@/lib/base/form-data';
import type { OpenBatch } from '@/lib/growing/open-batch';
import type { ShedSnapshot } from '@/lib/offline/shed-snapshot';
import { loadMessages } from '@/lib/ui/messages/load-messages';
import type { CheckContext } from '@/lib/ui/quick/checked-entry';
import { quickWordsOf } from '@/lib/ui/quick/quick-words';
import type { TypedEntry } from '@/lib/ui/quick/typed-entry';

export const ives: ShedSnapshot['person'] = {
  id: '01890000-0000-7000-8000-000000000001',
  name: 'Ives Marrow',
  language: 'en',
  region: 'en-US',
  massUnit: 'kg',
  temperatureUnit: 'celsius',
};

/** Twenty oyster bags with 20 kg of dry straw, first picked eleven days before the tests' day. */
export function shedBatch(changes: Partial<OpenBatch> = {}): OpenBatch {
  return {
    id: '01890000-0000-7000-8000-00000000000a',
    code: 'KTR-7',
    siteId: '01890000-0000-7000-8000-0000000000a1',
    siteName: 'Mill Lane Garden',
    timeZone: 'America/New_York',
    speciesEn: 'Oyster mushroom',
    speciesEs: 'Hongo ostra',
    container: 'bag',
    inoculatedOn: '2026-04-01',
    liveUnits: 18,
    unitCount: 20,
    lastFlush: 1,
    lastPickedOn: '2026-05-09',
    flushGapDays: null,
    trimDefault: 'trimmed',
    colonised: true,
    pinsSeen: true,
    dryGrams: 20_000,
    pickedGrams: 9_000,
    ...changes,
  };
}

/** Noon of 2026-05-20 at Mill Lane. */
export const noon = new Date('2026-05-20T16:00:00Z');

export function checkContext(changes: Partial<CheckContext> = {}): CheckContext {
  const words = quickWordsOf(loadMessages('en'), 'en-US');
  return { batches: [shedBatch()], words, person: ives, now: noon, confirmed: [], ...changes };
}

/** What a form with these fields holds. */
export function typedForm(fields: Readonly<Record<string, string>>): TypedEntry {
  const data = new FormData();
  for (const [name, value] of Object.entries(fields)) data.append(name, value);
  return formToObject(data);
}
