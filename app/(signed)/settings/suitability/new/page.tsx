import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { newId } from '@/lib/base/new-id';
import { listSuitability } from '@/lib/records/settings/list-suitability.query';
import { addressValues } from '@/lib/ui/form/address-values';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { RecordForm } from '@/lib/ui/form/record-form';
import { addSuitabilityFields } from '@/lib/ui/settings/suitability-fields';
import { addSuitabilityAction } from '../actions';

export default async function AddSuitabilityPage({ searchParams }: PageProps<'/settings/suitability/new'>) {
  const actor = await requireActor('coordinator');
  const list = await readAs(actor, listSuitability);
  const fields = await addSuitabilityFields(list, actor.language);
  const t = await getTranslations('settings');
  return (
    <RecordForm
      action={addSuitabilityAction}
      heading={t('suitability.add')}
      fields={fields}
      values={{ ...addressValues(fields, await searchParams), id: newId() }}
      submitLabel={t('suitability.submitNew')}
      words={await loadFormWords()}
    >
      <p>{t('suitability.addIntro')}</p>
    </RecordForm>
  );
}
