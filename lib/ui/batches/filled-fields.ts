import { getTranslations } from 'next-intl/server';
import type { MassUnit, VolumeUnit } from '@/lib/database/generated/enums';
import { type ContainerKind, moistureSources } from '@/lib/growing/vocabulary';
import { filledWithChoices } from '@/lib/records/batch/batch-fields.input';
import type { ChoiceOption, FieldSpec } from '../form/field-spec';
import { massUnits } from '../form/mass-units';
import { sentenceCase } from '../format/sentence-case';
import { bedAreaField, foldedLayers, logFields } from './bed-log-fields';

type Ask = {
  readonly container: ContainerKind;
  readonly woods: readonly ChoiceOption[];
  readonly massUnit: MassUnit;
  readonly layers: { readonly rows: number; readonly volumeUnit: VolumeUnit } | undefined;
  /** Code of the batch whose masses stand in the boxes until they are weighed anew. */
  readonly copiedFrom: string | undefined;
};

async function filledFields({ massUnit, copiedFrom }: Ask): Promise<FieldSpec[]> {
  const t = await getTranslations('batches');
  const words = await getTranslations('vocabulary');
  const label = (name: Parameters<typeof t>[0]) => sentenceCase(t(name));
  return [
    {
      kind: 'mass',
      name: 'filledMass',
      label: label('fields.filledMass'),
      hint: copiedFrom === undefined ? t('hints.filledMass') : t('hints.copied', { code: copiedFrom }),
      units: massUnits(massUnit),
      optional: true,
    },
    {
      kind: 'radio',
      name: 'filledWith',
      label: label('fields.filledWith'),
      options: filledWithChoices.map((value) => ({ value, label: t(`filledWith.${value}`) })),
    },
    {
      kind: 'radio',
      name: 'moistureSource',
      label: label('fields.moistureSource'),
      options: moistureSources.map((value) => ({
        value,
        label: words(`moistureSource.${value}`),
        hint: t(`moistureHint.${value}`),
      })),
    },
    {
      kind: 'decimal',
      name: 'moisturePercent',
      label: label('fields.moisturePercent'),
      suffix: '%',
      hint: t('hints.moisturePercent'),
      optional: true,
    },
  ];
}

/** What a batch grows in: only the fields of its kind, a bed's area, a log's tree and size, units and mass of the rest. */
export async function containerFields(ask: Ask): Promise<FieldSpec[]> {
  const { container, woods, massUnit, layers } = ask;
  const t = await getTranslations('batches');
  switch (container) {
    case 'bed':
      return [
        await bedAreaField({ massUnit }),
        ...(layers === undefined
          ? []
          : [await foldedLayers({ massUnit, volumeUnit: layers.volumeUnit }, layers.rows)]),
        { kind: 'hidden', name: 'unitCount' },
        {
          kind: 'group',
          name: 'bedMass',
          legend: t('groups.bedMass'),
          hint: t('hints.bedMass'),
          folded: true,
          fields: await filledFields(ask),
        },
      ];
    case 'log':
      return [...(await logFields({ massUnit }, woods)), { kind: 'hidden', name: 'moistureSource' }];
    default:
      return [
        { kind: 'whole', name: 'unitCount', label: t(`unitCount.${container}`) },
        ...(await filledFields(ask)),
      ];
  }
}
