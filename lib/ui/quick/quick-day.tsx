import { addDays } from '@/lib/growing/calendar-date';
import type { FieldContext } from '../form/field-context';
import { DateField } from '../form/fields/date-field';
import type { QuickWords } from './quick-words';

type Props = {
  readonly name: string;
  readonly label: string;
  readonly today: string;
  readonly words: QuickWords;
  readonly context: FieldContext;
};

/** Today, yesterday or another day, as everywhere; today is chosen already. */
export function QuickDay({ name, label, today, words, context }: Props) {
  const quick = [
    { value: today, label: words.days.today },
    { value: addDays(today, -1), label: words.days.yesterday },
    { value: 'other', label: words.days.other },
  ];
  return <DateField spec={{ kind: 'date', name, label, quick }} context={context} />;
}
