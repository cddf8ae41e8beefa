import type { FactValue } from '@/lib/records/entry/entry-fact';
import type { ProblemReader } from '../form/problem-text';
import { formatDate } from '../format/date-text';
import { formatMassWithTwin } from '../format/mass-text';

/** One value of a record in the reader's language and units; a dash where nothing was said. */
export function factText(value: FactValue | null, { words, locale, units }: ProblemReader): string {
  if (value === null) return '–';
  switch (value.kind) {
    case 'date':
      return formatDate(value.date, locale);
    case 'mass':
      return formatMassWithTwin(value.grams, units.massUnit, locale);
    case 'count':
      return new Intl.NumberFormat(locale).format(value.count);
    case 'text':
      return value.text;
    case 'word':
      return words(`vocabulary.${value.group}.${value.word}`);
  }
}
