import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import { Link } from '../page/link';
import type { FieldSpec, FormState } from './field-spec';
import { Field } from './fields/field';
import { loadFormWords } from './load-form-words';
import { isLongSiteChoice, SiteChoice } from './site-choice';

/** A filter in force, and the address without it. */
export type FilterChip = { readonly label: string; readonly without: Route };

type Props = {
  /** The page itself: the filters live in its address. */
  readonly action: Route;
  readonly fields: readonly FieldSpec[];
  readonly values: FormState['values'];
  readonly chips: readonly FilterChip[];
  /** Sentences about answers that could not be taken; the form stands open then. */
  readonly errors?: FormState['errors'];
  /** What the folded form is called, where "Filters" does not say it. */
  readonly summary?: string;
};

/** Filters of a page as a form that changes the address; each one in force is removed with one tap. */
export async function FilterForm({ action, fields, values, chips, errors = [], summary }: Props) {
  const t = await getTranslations('common');
  const context = { values, errors, words: await loadFormWords() };
  return (
    <section aria-label={summary ?? t('filters')}>
      <details className="no-print" open={errors.length > 0}>
        <summary>{summary ?? t('filters')}</summary>
        <form action={action} method="get" noValidate>
          <div className="filter-fields">
            {fields.map((field) =>
              isLongSiteChoice(field) ? null : <Field key={field.name} spec={field} context={context} />,
            )}
            <button type="submit" className="button button-plain">
              {t('applyFilters')}
            </button>
            {fields.map((field) =>
              isLongSiteChoice(field) ? (
                <SiteChoice key={field.name} spec={field} context={context} action={action} />
              ) : null,
            )}
          </div>
        </form>
      </details>
      {chips.length === 0 ? null : (
        <p className="chips">
          <span>{t('filteredBy')}</span>
          {chips.map((chip) => (
            <Link
              key={chip.label}
              className="chip"
              href={chip.without}
              aria-label={t('removeFilter', { filter: chip.label })}
            >
              {chip.label}
              <svg width="12" height="12" viewBox="0 0 12 12" aria-hidden="true">
                <path d="M2 2 10 10M10 2 2 10" stroke="currentColor" strokeWidth="2" />
              </svg>
            </Link>
          ))}
        </p>
      )}
    </section>
  );
}
