import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import { ErrorSummary } from '../form/error-summary';
import { fieldNames } from '../form/field-names';
import type { FieldSpec, FormState } from '../form/field-spec';
import { Field } from '../form/fields/field';
import { loadFormWords } from '../form/load-form-words';

const formId = 'labels';

type Props = {
  readonly heading: string;
  readonly fields: readonly FieldSpec[];
  readonly values: FormState['values'];
  readonly errors: FormState['errors'];
  readonly children: React.ReactNode;
};

/** How to print, as a form whose answers live in the address: one button makes the PDF, the other shows the places. */
export async function PrintForm({ heading, fields, values, errors, children }: Props) {
  const t = await getTranslations('labels');
  const words = await loadFormWords();
  const context = { values, errors, words };
  return (
    <>
      <title>{`${errors.length > 0 ? `${words.errorPrefix} ` : ''}${heading} – ${words.product}`}</title>
      <ErrorSummary
        state={{ values, errors, questions: [] }}
        words={words}
        formId={formId}
        known={fieldNames(fields)}
      />
      <h1>{heading}</h1>
      {children}
      <form
        id={formId}
        action={'/labels' as Route}
        method="get"
        noValidate
        className="record-form"
        tabIndex={-1}
      >
        <div className="record-fields">
          {fields.map((field) => (
            <Field key={field.name} spec={field} context={context} />
          ))}
        </div>
        <div className="form-end">
          <button type="submit" formAction="/labels/pdf" className="button button-action">
            {t('open')}
          </button>
          <button type="submit" className="button button-plain">
            {t('show')}
          </button>
        </div>
      </form>
    </>
  );
}
