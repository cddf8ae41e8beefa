import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { newId } from '@/lib/base/new-id';
import { todayInZone } from '@/lib/growing/calendar-date';
import { listChoices } from '@/lib/records/network/list-choices.query';
import { listSpawnLots } from '@/lib/records/spawn-lot/list-spawn-lots.query';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { namedOptions } from '@/lib/ui/form/named-options';
import { recentDays } from '@/lib/ui/form/recent-days';
import { RecordForm } from '@/lib/ui/form/record-form';
import { spawnLotFields } from '@/lib/ui/lots/spawn-lot-fields';
import { addSpawnLotAction } from '../actions';

export default async function NewSpawnLotPage() {
  const actor = await requireActor('coordinator', 'member');
  const { species, lots } = await readAs(actor, async (context) => ({
    species: (await listChoices(context)).species,
    lots: (await listSpawnLots(context, { of: null, after: null })).lots,
  }));
  const t = await getTranslations('lots');
  const today = todayInZone(actor.networkTimeZone, new Date());
  return (
    <RecordForm
      action={addSpawnLotAction}
      heading={t('newSpawn')}
      fields={
        await spawnLotFields({
          kind: 'add',
          species: namedOptions(species, actor.language),
          parents: lots.map((lot) => ({
            value: lot.id,
            label: `${lot.code} · ${lot.species[actor.language]}`,
          })),
          days: await recentDays(today),
          massUnit: actor.massUnit,
        })
      }
      values={{ id: newId(), receivedOn__quick: today, form: 'grain' }}
      submitLabel={t('submitAdd')}
      words={await loadFormWords()}
    />
  );
}
