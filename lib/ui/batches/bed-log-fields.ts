import { getTranslations } from 'next-intl/server';
import type { MassUnit, VolumeUnit } from '@/lib/database/generated/enums';
import { bedLayerMaterials } from '@/lib/growing/vocabulary';
import type { ChoiceOption, FieldSpec } from '../form/field-spec';
import { massUnits } from '../form/mass-units';
import { areaUnits, lengthUnits, volumeUnits } from '../form/person-units';
import { sentenceCase } from '../format/sentence-case';

type Reader = { readonly massUnit: MassUnit; readonly volumeUnit: VolumeUnit };

/** The area of a bed: what its yield is divided by. */
export async function bedAreaField({ massUnit }: Pick<Reader, 'massUnit'>): Promise<FieldSpec> {
  const t = await getTranslations('batches');
  return {
    kind: 'area',
    name: 'bedArea',
    label: sentenceCase(t('fields.bedArea')),
    hint: t('hints.bedArea'),
    units: areaUnits(massUnit),
  };
}

/** Layers of a bed from the ground up: `layers.0` is the lowest. Empty rows are left out when read. */
export async function bedLayerFields({ massUnit, volumeUnit }: Reader, rows: number): Promise<FieldSpec[]> {
  const t = await getTranslations('batches');
  const words = await getTranslations('vocabulary.bedLayerMaterial');
  const common = await getTranslations('common');
  return Array.from({ length: rows }, (_, row): FieldSpec[] => [
    {
      kind: 'select',
      name: `layers.${row}.material`,
      label: t(row === 0 ? 'layerLowest' : 'layerNumber', { number: row + 1 }),
      options: bedLayerMaterials.map((value) => ({ value, label: words(value) })),
      optional: true,
      emptyLabel: common('none'),
    },
    {
      kind: 'length',
      name: `layers.${row}.thickness`,
      label: sentenceCase(t('fields.layers.thickness')),
      units: lengthUnits(massUnit),
      optional: true,
    },
    {
      kind: 'volume',
      name: `layers.${row}.volume`,
      label: sentenceCase(t('fields.layers.volume')),
      units: volumeUnits(volumeUnit),
      optional: true,
    },
  ]).flat();
}

/** The layers as a folded part of the form that starts a bed; they can be written down later. */
export async function foldedLayers(reader: Reader, rows: number): Promise<FieldSpec> {
  const t = await getTranslations('batches');
  return {
    kind: 'group',
    name: 'layersGroup',
    legend: t('groups.layers'),
    hint: t('hints.layers'),
    folded: true,
    fields: await bedLayerFields(reader, rows),
  };
}

/** Logs: how many, of which tree, how large; nothing of bags. */
export async function logFields(
  { massUnit }: Pick<Reader, 'massUnit'>,
  woods: readonly ChoiceOption[],
): Promise<FieldSpec[]> {
  const t = await getTranslations('batches');
  const label = (name: Parameters<typeof t>[0]) => sentenceCase(t(name));
  const lengths = lengthUnits(massUnit);
  return [
    { kind: 'whole', name: 'unitCount', label: t('unitCount.log') },
    { kind: 'select', name: 'logWoodCode', label: label('fields.logWoodCode'), options: woods },
    {
      kind: 'length',
      name: 'logDiameter',
      label: label('fields.logDiameter'),
      units: lengths,
      optional: true,
    },
    { kind: 'length', name: 'logLength', label: label('fields.logLength'), units: lengths, optional: true },
    {
      kind: 'mass',
      name: 'logGreenMass',
      label: label('fields.logGreenMass'),
      hint: t('hints.logGreenMass'),
      units: massUnits(massUnit),
      optional: true,
    },
  ];
}
