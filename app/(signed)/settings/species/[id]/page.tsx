import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { listSettings } from '@/lib/records/settings/list-settings.query';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { RecordForm } from '@/lib/ui/form/record-form';
import { NotThere } from '@/lib/ui/page/not-there';
import { speciesFields } from '@/lib/ui/settings/setting-fields';
import { changeSpeciesAction } from '../../actions';

export default async function SpeciesSettingPage({ params }: PageProps<'/settings/species/[id]'>) {
  const { id } = await params;
  const actor = await requireActor('coordinator');
  const settings = await readAs(actor, listSettings);
  const row = settings?.species.find((one) => one.id === id);
  if (!row) return <NotThere />;
  const t = await getTranslations('settings');
  return (
    <RecordForm
      action={changeSpeciesAction}
      heading={t('change', { name: row[actor.language] })}
      fields={await speciesFields()}
      values={{
        id,
        revision: String(row.revision),
        nameEn: row.en,
        nameEs: row.es,
      }}
      submitLabel={t('submit')}
      words={await loadFormWords()}
    />
  );
}
