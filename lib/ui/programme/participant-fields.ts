import { getTranslations } from 'next-intl/server';
import { consentKinds } from '@/lib/records/participant/participant.input';
import type { ChoiceOption, FieldSpec } from '../form/field-spec';
import { sentenceCase } from '../format/sentence-case';
import { correctionFields } from '../history/correction-fields';
import { siteSelect } from '../sites/site-select';
import type { FormKind } from './form-kind';

/** Name and consents of a participant. */
export async function participantFields(form: FormKind, days: readonly ChoiceOption[]): Promise<FieldSpec[]> {
  const t = await getTranslations('programme.participants');
  const words = await getTranslations('vocabulary.consentKind');
  const label = (name: Parameters<typeof t>[0]) => sentenceCase(t(name));
  return [
    ...(form.kind === 'add'
      ? ([
          { kind: 'hidden', name: 'id' },
          siteSelect(form.site, label('fields.siteId')),
        ] satisfies FieldSpec[])
      : []),
    { kind: 'text', name: 'name', label: label('fields.name') },
    {
      kind: 'several',
      name: 'consents',
      label: label('fields.consents'),
      hint: t('hints.consents'),
      optional: true,
      options: consentKinds.map((value) => ({ value, label: words(value) })),
    },
    {
      kind: 'date',
      name: 'agreedOn',
      label: label('fields.agreedOn'),
      hint: t('hints.agreedOn'),
      optional: true,
      quick: days,
    },
    ...(form.kind === 'correct' ? await correctionFields() : []),
  ];
}
