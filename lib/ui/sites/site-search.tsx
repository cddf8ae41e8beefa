import { getTranslations } from 'next-intl/server';
import type { SiteSearch } from '@/lib/records/site/site-search.input';
import { Field } from '../form/fields/field';
import { loadFormWords } from '../form/load-form-words';

type Props = {
  /** The page itself: what is looked for stands in its address. */
  readonly action: '/sites' | '/sites/choose';
  readonly search: SiteSearch;
  /** What the address holds besides. */
  readonly carried?: Readonly<Record<string, string>>;
};

/** Looks for sites by part of their name or code. */
export async function SiteSearchForm({ action, search, carried = {} }: Props) {
  const t = await getTranslations('sites.search');
  const values = { siteName: search.siteName ?? '', ...carried };
  const context = { values, errors: [], words: await loadFormWords() };
  return (
    <search className="no-print">
      <form action={action} method="get" noValidate>
        <div className="filter-fields">
          {Object.keys(carried).map((name) => (
            <Field key={name} spec={{ kind: 'hidden', name }} context={context} />
          ))}
          <Field
            spec={{ kind: 'text', name: 'siteName', label: t('name'), optional: true }}
            context={context}
          />
          <button type="submit" className="button button-plain">
            {t('show')}
          </button>
        </div>
      </form>
    </search>
  );
}
