import 'server-only';
import { getTranslations } from 'next-intl/server';
import type { FormState } from './field-spec';
import { postedValues } from './posted-values';

/**
 * The form again with its sums, when it was posted by the button that works them out (the way without script);
 * undefined when it is to be saved.
 */
export async function workedOut(data: FormData): Promise<FormState | undefined> {
  if (!data.has('workOut')) return undefined;
  const t = await getTranslations('sums');
  const { workOut: _button, ...values } = postedValues(data);
  return { values, errors: [], questions: [], notice: t('workedOut') };
}
