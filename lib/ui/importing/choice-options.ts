import { getLocale } from 'next-intl/server';
import type { FieldChoices } from '@/lib/intake/table/field-choices';
import type { ChoiceOption } from '../form/field-spec';
import { formatDate } from '../format/date-text';
import { dynamicWords } from '../i18n/dynamic-words';

/** Where the catalogue has the words of a field's values. */
const valueWords: Readonly<Record<string, string>> = {
  containerKind: 'vocabulary.containerKind',
  trimState: 'vocabulary.trimState',
  sign: 'vocabulary.contaminationSign',
  stage: 'vocabulary.cropStage',
  action: 'vocabulary.findingAction',
  moistureSource: 'vocabulary.moistureSource',
  form: 'vocabulary.spawnForm',
  kind: 'vocabulary.siteKind',
  role: 'vocabulary.membershipRole',
  readingPlace: 'vocabulary.readingPlace',
};

/** What there is to choose for a field of a table, in words. */
export async function choiceOptions(): Promise<
  (field: string, choices: FieldChoices | undefined) => ChoiceOption[]
> {
  const words = await dynamicWords();
  const locale = await getLocale();
  return (field, choices) => {
    if (choices === undefined) return [];
    if (choices.kind === 'records')
      return choices.options.map(({ value, label, about, on }) => {
        const more = [about ?? [], on === undefined ? [] : formatDate(on, locale)].flat();
        return { value, label: [label, ...more].join(' · ') };
      });
    return choices.values.map((value) => {
      const key = `${valueWords[field]}.${value}`;
      return { value, label: words.has(key) ? words(key) : value };
    });
  };
}
