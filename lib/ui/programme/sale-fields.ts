import { getTranslations } from 'next-intl/server';
import type { MassUnit } from '@/lib/database/generated/enums';
import { outletKinds } from '@/lib/growing/programme-vocabulary';
import type { ChoiceOption, FieldSpec } from '../form/field-spec';
import { massUnits } from '../form/mass-units';
import { sentenceCase } from '../format/sentence-case';
import { correctionFields } from '../history/correction-fields';
import { siteSelect } from '../sites/site-select';
import type { FormKind } from './form-kind';

type Options = {
  readonly form: FormKind;
  readonly days: readonly ChoiceOption[];
  readonly massUnit: MassUnit;
  readonly currency: string;
};

/** The form of a sale. */
export async function saleFields({ form, days, massUnit, currency }: Options): Promise<FieldSpec[]> {
  const t = await getTranslations('programme.sales');
  const common = await getTranslations('common');
  const words = await getTranslations('vocabulary.outletKind');
  const label = (name: Parameters<typeof t>[0]) => sentenceCase(t(name));
  return [
    ...(form.kind === 'add'
      ? ([
          { kind: 'hidden', name: 'id' },
          siteSelect(form.site, label('fields.siteId')),
        ] satisfies FieldSpec[])
      : []),
    { kind: 'date', name: 'soldOn', label: label('fields.soldOn'), quick: days },
    {
      kind: 'select',
      name: 'outlet',
      label: label('fields.outlet'),
      options: outletKinds.map((value) => ({ value, label: words(value) })),
    },
    { kind: 'mass', name: 'mass', label: label('fields.mass'), units: massUnits(massUnit) },
    { kind: 'decimal', name: 'amount', label: label('fields.amount'), suffix: currency },
    { kind: 'whole', name: 'customers', label: label('fields.customers'), optional: true },
    { kind: 'paragraph', name: 'note', label: label('fields.note'), optional: true },
    ...(form.kind === 'correct'
      ? await correctionFields()
      : ([
          {
            kind: 'caution',
            name: 'care',
            title: t('caution.title'),
            lines: [t('caution.species'), t('caution.authority'), common('caution.rule')],
          },
        ] satisfies FieldSpec[])),
  ];
}
