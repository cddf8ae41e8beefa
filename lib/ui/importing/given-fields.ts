import { getLocale, getTranslations } from 'next-intl/server';
import type { AskedField, IntakeView } from '@/lib/intake/table/view-file';
import { dateValues } from '../form/date-values';
import type { FieldSpec, FormState } from '../form/field-spec';
import { formatDate } from '../format/date-text';
import { choiceOptions } from './choice-options';

type Said = Readonly<Record<string, string>>;

/** Fields of a form for what no column of a table holds: of the whole table, or of one row. `under` begins their names. */
export async function givenFields(
  asked: readonly AskedField[],
  under: 'given' | 'said',
  emptyLabel: string,
): Promise<FieldSpec[]> {
  const t = await getTranslations('import');
  const optionsOf = await choiceOptions();
  return asked.map(({ name, cell, choices }): FieldSpec => {
    const named = { name: `${under}.${name}`, label: t(`fields.${name as 'batch'}`), optional: true };
    if (cell === 'date') return { ...named, kind: 'date', quick: [] };
    if (cell === 'count') return { ...named, kind: 'whole' };
    return { ...named, kind: 'select', emptyLabel, options: optionsOf(name, choices) };
  });
}

/** What such fields hold. */
export function givenValues(
  asked: readonly AskedField[],
  under: 'given' | 'said',
  said: Said,
): FormState['values'] {
  return Object.assign(
    {},
    ...asked.map(({ name, cell }) => {
      const text = said[name] ?? '';
      const at = `${under}.${name}`;
      return cell === 'date' ? dateValues(at, text === '' ? null : text) : { [at]: text };
    }),
  );
}

/** What was given for the whole table, each in words: "kind of container: Bag". */
export async function givenWords({ asked, layout }: IntakeView): Promise<readonly string[]> {
  const t = await getTranslations('import');
  const locale = await getLocale();
  const optionsOf = await choiceOptions();
  return asked.flatMap(({ name, cell, choices }) => {
    const value = layout.given[name];
    if (value === undefined || value === '') return [];
    const option = optionsOf(name, choices).find((one) => one.value === value)?.label;
    const text = cell === 'date' ? formatDate(value, locale) : (option ?? value);
    return [t('given.one', { field: t(`fields.${name as 'batch'}`), value: text })];
  });
}
