import { getTranslations } from 'next-intl/server';
import { practiceKinds } from '@/lib/growing/programme-vocabulary';
import type { ChoiceOption, FieldSpec } from '../form/field-spec';
import { sentenceCase } from '../format/sentence-case';
import { correctionFields } from '../history/correction-fields';
import { siteSelect } from '../sites/site-select';
import type { FormKind } from './form-kind';

/** The form of a practice that a site took up. */
export async function practiceFields(form: FormKind, days: readonly ChoiceOption[]): Promise<FieldSpec[]> {
  const t = await getTranslations('programme.practices');
  const words = await getTranslations('vocabulary.practiceKind');
  const label = (name: Parameters<typeof t>[0]) => sentenceCase(t(name));
  return [
    ...(form.kind === 'add'
      ? ([
          { kind: 'hidden', name: 'id' },
          siteSelect(form.site, label('fields.siteId')),
        ] satisfies FieldSpec[])
      : []),
    {
      kind: 'select',
      name: 'practice',
      label: label('fields.practice'),
      options: practiceKinds.map((value) => ({ value, label: words(value) })),
    },
    {
      kind: 'text',
      name: 'description',
      label: label('fields.description'),
      hint: t('hints.description'),
      optional: true,
    },
    { kind: 'date', name: 'since', label: label('fields.since'), quick: days },
    {
      kind: 'date',
      name: 'until',
      label: label('fields.until'),
      hint: t('hints.until'),
      optional: true,
      quick: [],
    },
    {
      kind: 'whole',
      name: 'growers',
      label: label('fields.growers'),
      hint: t('hints.growers'),
      optional: true,
    },
    ...(form.kind === 'correct' ? await correctionFields() : []),
  ];
}
