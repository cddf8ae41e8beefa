import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { listSuitability } from '@/lib/records/settings/list-suitability.query';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { RecordForm } from '@/lib/ui/form/record-form';
import { Link } from '@/lib/ui/page/link';
import { NotThere } from '@/lib/ui/page/not-there';
import { changeSuitabilityFields } from '@/lib/ui/settings/suitability-fields';
import { suitabilityNames } from '@/lib/ui/settings/suitability-words';
import { changeSuitabilityAction } from '../actions';

export default async function ChangeSuitabilityPage({ params }: PageProps<'/settings/suitability/[id]'>) {
  const { id } = await params;
  const actor = await requireActor('coordinator');
  const list = await readAs(actor, listSuitability);
  const row = list.rows.find((one) => one.id === id);
  if (!row) return <NotThere />;
  const t = await getTranslations('settings');
  const { whole } = await suitabilityNames(list, actor.language);
  return (
    <RecordForm
      action={changeSuitabilityAction}
      heading={t('change', { name: whole(row) })}
      fields={await changeSuitabilityFields()}
      values={{
        id,
        revision: String(row.revision),
        verdict: row.verdict,
        reasonEn: row.en,
        reasonEs: row.es,
      }}
      submitLabel={t('submit')}
      words={await loadFormWords()}
      after={<Link href={`/history/${id}` as Route}>{t('suitability.history')}</Link>}
    />
  );
}
