import { getLocale, getTranslations } from 'next-intl/server';
import type { ComparisonFilter } from '@/lib/analysis/comparison/comparison-filter.input';
import type { Address } from '@/lib/base/given-once';
import type { FieldError } from '@/lib/base/result';
import type { FormState } from '../form/field-spec';
import { problemText } from '../form/problem-text';
import { formatDate } from '../format/date-text';
import { dynamicWords } from '../i18n/dynamic-words';
import { getReaderUnits } from '../i18n/reader-units';
import { typedDay } from './typed-day';

/** Days that a page could not take: a sentence for each field, what was typed, and of which days the figures are. */
export type DayProblems = {
  readonly errors: FormState['errors'];
  /** Empty where nothing is wrong. */
  readonly values: Readonly<Record<string, string>>;
  readonly shown: string | undefined;
};

/** What a page of figures says where the days that its address asks for cannot be taken. */
export async function loadDayProblems(
  { problems, address }: { readonly problems: readonly FieldError[]; readonly address: Address },
  { from, to }: Pick<ComparisonFilter, 'from' | 'to'>,
  area: 'comparison.filter' | 'costs.filter',
): Promise<DayProblems> {
  if (problems.length === 0) return { errors: [], values: {}, shown: undefined };
  const locale = await getLocale();
  const t = await getTranslations('comparison.filter');
  const sentence = problemText({ words: await dynamicWords(), locale, units: await getReaderUnits() }, area);
  return {
    errors: problems.map((problem) => ({ field: problem.field, text: sentence('errors', problem) })),
    values: { ...typedDay(address, 'from'), ...typedDay(address, 'to') },
    shown: t('shown', { from: formatDate(from, locale), to: formatDate(to, locale) }),
  };
}
