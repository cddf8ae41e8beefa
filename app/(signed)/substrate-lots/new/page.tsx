import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { newId } from '@/lib/base/new-id';
import { todayInZone } from '@/lib/growing/calendar-date';
import { listChoices } from '@/lib/records/network/list-choices.query';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { namedOptions } from '@/lib/ui/form/named-options';
import { recentDays } from '@/lib/ui/form/recent-days';
import { RecordForm } from '@/lib/ui/form/record-form';
import { substrateLotFields } from '@/lib/ui/lots/substrate-lot-fields';
import { addSubstrateLotAction } from '../actions';

export default async function NewSubstrateLotPage() {
  const actor = await requireActor('coordinator', 'member');
  const { materials } = await readAs(actor, listChoices);
  const t = await getTranslations('lots');
  const today = todayInZone(actor.networkTimeZone, new Date());
  return (
    <RecordForm
      action={addSubstrateLotAction}
      heading={t('newSubstrate')}
      fields={
        await substrateLotFields({
          kind: 'add',
          materials: namedOptions(materials, actor.language),
          days: await recentDays(today),
          massUnit: actor.massUnit,
        })
      }
      values={{ id: newId(), receivedOn__quick: today, moistureSource: 'assumed' }}
      submitLabel={t('submitAdd')}
      words={await loadFormWords()}
    />
  );
}
