import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { todayInZone } from '@/lib/growing/calendar-date';
import { listChoices } from '@/lib/records/network/list-choices.query';
import { getSpawnLot } from '@/lib/records/spawn-lot/get-spawn-lot.query';
import { listSpawnLots } from '@/lib/records/spawn-lot/list-spawn-lots.query';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { namedOptions } from '@/lib/ui/form/named-options';
import { recentDays } from '@/lib/ui/form/recent-days';
import { RecordForm } from '@/lib/ui/form/record-form';
import { spawnLotFields } from '@/lib/ui/lots/spawn-lot-fields';
import { spawnLotValues } from '@/lib/ui/lots/spawn-lot-values';
import { NotThere } from '@/lib/ui/page/not-there';
import { correctSpawnLotAction } from '../../actions';

export default async function CorrectSpawnLotPage({ params }: PageProps<'/spawn-lots/[id]/correct'>) {
  const { id } = await params;
  const actor = await requireActor('coordinator', 'member');
  const { lot, species, lots } = await readAs(actor, async (context) => ({
    lot: await getSpawnLot(context, id),
    species: (await listChoices(context)).species,
    lots: (await listSpawnLots(context, { of: null, after: null })).lots,
  }));
  if (!lot || lot.voided !== null) return <NotThere />;
  const t = await getTranslations('lots');
  const parents = lots
    .filter((one) => one.id !== id && one.id !== lot.parent?.id)
    .map((one) => ({ value: one.id, label: `${one.code} · ${one.species[actor.language]}` }));
  return (
    <RecordForm
      action={correctSpawnLotAction}
      heading={t('correctHeading', { code: lot.code })}
      fields={
        await spawnLotFields({
          kind: 'correct',
          species: namedOptions(species, actor.language),
          parents:
            lot.parent === null ? parents : [{ value: lot.parent.id, label: lot.parent.code }, ...parents],
          days: await recentDays(todayInZone(actor.networkTimeZone, new Date())),
          massUnit: actor.massUnit,
        })
      }
      values={spawnLotValues(lot, actor)}
      submitLabel={t('submitCorrect')}
      words={await loadFormWords()}
    />
  );
}
