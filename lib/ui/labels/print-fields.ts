import { getTranslations } from 'next-intl/server';
import type { MassUnit } from '@/lib/database/generated/enums';
import { usualSheet } from '@/lib/labels/sheet/usual-sheet';
import type { LabelPrintView } from '@/lib/records/label/get-label-print.query';
import type { FieldSpec, FormState } from '../form/field-spec';
import { sentenceCase } from '../format/sentence-case';
import { sheetNames } from './sheet-names';

type Reader = { readonly region: string; readonly massUnit: MassUnit };

/** The questions of printing labels: on what, of what, how many, and where to begin. */
export async function printFields(view: LabelPrintView, reader: Reader): Promise<FieldSpec[]> {
  const t = await getTranslations('labels');
  const names = await sheetNames(reader.massUnit);
  const label = (name: Parameters<typeof t>[0]) => sentenceCase(t(name));
  const [first, second] = view.batches;
  const numbered = view.batches.some(({ unitCount }) => unitCount > 1);
  const per: FieldSpec = {
    kind: 'radio',
    name: 'per',
    label: label('fields.per'),
    options: (['unit', 'batch'] as const).map((value) => ({ value, label: t(`per.${value}`) })),
  };
  const units: FieldSpec = {
    kind: 'text',
    name: 'units',
    label: label('fields.units'),
    hint: t('unitsHint', { count: first?.unitCount ?? 1 }),
    width: 'short',
    optional: true,
  };
  return [
    { kind: 'hidden', name: 'batch' },
    {
      kind: 'select',
      name: 'sheet',
      label: label('fields.sheet'),
      options: names.options(view.ownSheets, usualSheet(reader.region).paper),
    },
    ...(numbered ? [per] : []),
    { kind: 'whole', name: 'from', label: label('fields.from'), hint: t('fromHint') },
    {
      kind: 'group',
      name: 'more',
      legend: t('groups.more'),
      folded: true,
      fields: [
        ...(numbered && second === undefined ? [units] : []),
        { kind: 'whole', name: 'copies', label: label('fields.copies') },
        {
          kind: 'several',
          name: 'outline',
          label: label('fields.outline'),
          optional: true,
          options: [{ value: 'yes', label: t('outlineYes') }],
        },
      ],
    },
  ];
}

/** What the boxes hold: what the address says, or what is usual. */
export function printValues(
  view: LabelPrintView,
  address: Readonly<Record<string, string | string[] | undefined>>,
): FormState['values'] {
  const text = (name: string, usual: string) => {
    const [given] = [address[name]].flat();
    return given === undefined ? usual : given.slice(0, 200);
  };
  return {
    batch: view.batches.map(({ id }) => id),
    sheet: view.sheet.key,
    per: text('per', 'unit'),
    units: text('units', ''),
    copies: text('copies', '1'),
    from: text('from', '1'),
    outline: text('outline', ''),
  };
}
