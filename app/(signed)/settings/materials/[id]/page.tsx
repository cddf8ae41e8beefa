import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { listSettings } from '@/lib/records/settings/list-settings.query';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { RecordForm } from '@/lib/ui/form/record-form';
import { NotThere } from '@/lib/ui/page/not-there';
import { materialFields } from '@/lib/ui/settings/setting-fields';
import { changeMaterialAction } from '../../actions';

const text = (value: number | null) => (value === null ? '' : String(value));

export default async function MaterialSettingPage({ params }: PageProps<'/settings/materials/[id]'>) {
  const { id } = await params;
  const actor = await requireActor('coordinator');
  const settings = await readAs(actor, listSettings);
  const row = settings?.materials.find((one) => one.id === id);
  if (!row) return <NotThere />;
  const t = await getTranslations('settings');
  return (
    <RecordForm
      action={changeMaterialAction}
      heading={t('change', { name: row[actor.language] })}
      fields={await materialFields()}
      values={{
        id,
        revision: String(row.revision),
        nameEn: row.en,
        nameEs: row.es,
        receivedMoisturePercent: text(row.receivedMoisturePercent),
      }}
      submitLabel={t('submit')}
      words={await loadFormWords()}
    />
  );
}
