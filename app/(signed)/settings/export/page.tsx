import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import type { FieldSpec } from '@/lib/ui/form/field-spec';
import { Field } from '@/lib/ui/form/fields/field';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { Heading } from '@/lib/ui/page/heading';
import { Link } from '@/lib/ui/page/link';

const licences = ['none', 'CC-BY-4.0', 'CC0-1.0', 'ODbL-1.0'] as const;

export default async function ExportPage() {
  await requireActor('coordinator');
  const t = await getTranslations('export.archive');
  const licence: FieldSpec = {
    ...{ kind: 'select', name: 'licence', label: t('licence'), hint: t('licenceHint'), optional: false },
    options: licences.map((value) => ({
      value,
      label: t(`licences.${value.replaceAll('.', '-') as 'none'}`),
    })),
  };
  const context = { values: { licence: 'none' }, errors: [], words: await loadFormWords() };
  return (
    <>
      <Heading text={t('heading')} />
      <p>{t('intro')}</p>
      <p>{t('without')}</p>
      <form action="/settings/export/archive" method="get" noValidate className="record-form">
        <div className="record-fields">
          <Field spec={licence} context={context} />
        </div>
        <div className="form-end">
          <button type="submit" className="button button-action">
            {t('submit')}
          </button>
        </div>
      </form>
      <h2>{t('tablesHeading')}</h2>
      <p>{t('tables')}</p>
      <ul>
        {(['batches', 'weighings', 'treatments', 'substrate-lots', 'spawn-lots', 'sites'] as const).map(
          (list) => (
            <li key={list}>
              <Link href={`/${list}` as Route}>{t(`lists.${list}`)}</Link>
            </li>
          ),
        )}
      </ul>
      <h2>{t('backHeading')}</h2>
      <p>{t('back')}</p>
    </>
  );
}
