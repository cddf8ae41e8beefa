import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { listSettings } from '@/lib/records/settings/list-settings.query';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { celsiusValues } from '@/lib/ui/form/measure-values';
import { RecordForm } from '@/lib/ui/form/record-form';
import { NotThere } from '@/lib/ui/page/not-there';
import { methodFields } from '@/lib/ui/settings/setting-fields';
import { changeMethodAction } from '../../actions';

const text = (value: number | null) => (value === null ? '' : String(value));

export default async function MethodSettingPage({ params }: PageProps<'/settings/methods/[id]'>) {
  const { id } = await params;
  const actor = await requireActor('coordinator');
  const settings = await readAs(actor, listSettings);
  const row = settings?.methods.find((one) => one.id === id);
  if (!row) return <NotThere />;
  const t = await getTranslations('settings');
  return (
    <RecordForm
      action={changeMethodAction}
      heading={t('change', { name: row[actor.language] })}
      fields={await methodFields(actor.temperatureUnit)}
      values={{
        id,
        revision: String(row.revision),
        nameEn: row.en,
        nameEs: row.es,
        ...celsiusValues('minCelsius', row.minCelsius, actor),
        ...celsiusValues('maxCelsius', row.maxCelsius, actor),
        minPh: text(row.minPh),
        minMinutes: text(row.minMinutes),
        maxMinutes: text(row.maxMinutes),
      }}
      submitLabel={t('submit')}
      words={await loadFormWords()}
    />
  );
}
