import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { listSettings } from '@/lib/records/settings/list-settings.query';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { RecordForm } from '@/lib/ui/form/record-form';
import { NotThere } from '@/lib/ui/page/not-there';
import { windowFields } from '@/lib/ui/settings/setting-fields';
import { changeWindowAction } from '../../actions';

const text = (value: number | null) => (value === null ? '' : String(value));

const ends = (name: string, range: { from: number; to: number } | null) => ({
  [`${name}FromDays`]: text(range?.from ?? null),
  [`${name}ToDays`]: text(range?.to ?? null),
});

export default async function WindowSettingPage({ params }: PageProps<'/settings/windows/[id]'>) {
  const { id } = await params;
  const actor = await requireActor('coordinator');
  const settings = await readAs(actor, listSettings);
  const row = settings?.windows.find((one) => one.id === id);
  if (!row) return <NotThere />;
  const t = await getTranslations('settings');
  return (
    <RecordForm
      action={changeWindowAction}
      heading={t('change', { name: actor.language === 'es' ? row.speciesEs : row.speciesEn })}
      fields={await windowFields()}
      values={{
        id,
        revision: String(row.revision),
        contaminationDays: text(row.contaminationDays),
        yieldDays: text(row.yieldDays),
        firstLookDays: text(row.expected.firstLook),
        ...ends('colonised', row.expected.colonised),
        ...ends('pins', row.expected.pins),
        ...ends('firstHarvest', row.expected.firstHarvest),
        ...ends('betweenFlushes', row.expected.betweenFlushes),
      }}
      submitLabel={t('submit')}
      words={await loadFormWords()}
    >
      <p>{t('windowIntro')}</p>
    </RecordForm>
  );
}
