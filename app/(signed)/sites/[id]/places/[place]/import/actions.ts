'use server';

import type { Route } from 'next';
import { redirect } from 'next/navigation';
import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { runAs } from '@/lib/access/run-command';
import { readAs } from '@/lib/access/scoped-db';
import { guessLayout } from '@/lib/intake/conditions/guess-layout';
import { readTable } from '@/lib/intake/conditions/read-table';
import { splitTable } from '@/lib/intake/conditions/split-table';
import { importConditionsInput } from '@/lib/records/condition/condition.input';
import { getPlace } from '@/lib/records/condition/get-place.query';
import { importConditions } from '@/lib/records/condition/import-conditions.command';
import { isId } from '@/lib/records/fields/id-field';
import type { ImportState } from '@/lib/ui/conditions/import-state';
import { lookedAt } from '@/lib/ui/conditions/looked-at';
import { toFormState } from '@/lib/ui/form/to-form-state';
import { postedLayout, postedTable } from './read-posted';

/** Looks at a posted table and shows how it was understood; takes it in when asked to and every line can be read. */
export async function importConditionsAction(_state: ImportState, data: FormData): Promise<ImportState> {
  const actor = await requireActor('coordinator', 'member');
  const now = new Date();
  const t = await getTranslations('conditions.import');
  const refuse = (text: string): ImportState => ({ errors: [{ field: 'text', text }], table: null });
  const placeId = String(data.get('placeId') ?? '');
  const place = isId(placeId) ? await readAs(actor, (context) => getPlace(context, placeId, now)) : undefined;
  const text = await postedTable(data);
  if (place === undefined || text === undefined) return refuse(t('nothingPasted'));
  if (text === 'too-large') return refuse(t('tooLarge'));
  const { timeZone } = place.site;
  const usual = actor.region.endsWith('-US') ? 'mdy' : 'dmy';
  const known = place.layout === null ? undefined : readTable(text, place.layout, timeZone, now);
  const remembered =
    known !== undefined && known.readings.length > 0 && known.problems.length === 0 ? place.layout : null;
  const posted = postedLayout(data);
  const layout = posted ?? remembered ?? guessLayout(text, usual);
  const read = readTable(text, layout, timeZone, now);
  const lines = splitTable(text, layout.delimiter);
  const table = await lookedAt({
    ...{ text, layout, lines, read, place },
    from: posted ? 'posted' : remembered ? 'remembered' : 'guessed',
    temperatureUnit: actor.temperatureUnit,
  });
  if (data.get('step') !== 'save' || read.problems.length > 0 || read.readings.length === 0)
    return { errors: [], table };
  const id = data.get('id');
  const result = await runAs(
    actor,
    importConditionsInput,
    importConditions,
    { id: typeof id === 'string' ? id : '', placeId, layout, readings: read.readings },
    { origin: 'file_import' },
  );
  if (result.kind === 'ok') {
    const { siteId, read: count, added } = result.value;
    redirect(`/sites/${siteId}/places/${placeId}?read=${count}&added=${added}` as Route);
  }
  return { errors: (await toFormState('conditions', new FormData(), result)).errors, table };
}
