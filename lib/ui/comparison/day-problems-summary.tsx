import { ErrorSummary } from '../form/error-summary';
import { emptyFormState, type FormState } from '../form/field-spec';
import { loadFormWords } from '../form/load-form-words';

/** Above the heading of a page of figures: the days that it could not take, each leading to its field. */
export async function DayProblemsSummary({ errors }: { readonly errors: FormState['errors'] }) {
  if (errors.length === 0) return null;
  return (
    <ErrorSummary
      state={{ ...emptyFormState, errors }}
      words={await loadFormWords()}
      formId="field-from"
      known={['from', 'to']}
    />
  );
}
