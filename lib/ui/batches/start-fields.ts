import { getTranslations } from 'next-intl/server';
import type { MassUnit, VolumeUnit } from '@/lib/database/generated/enums';
import { type ContainerKind, componentRoles, moistureSources } from '@/lib/growing/vocabulary';
import { filledWithChoices, massStages } from '@/lib/records/batch/batch-fields.input';
import type { ChoiceOption, FieldSpec } from '../form/field-spec';
import { massUnits } from '../form/mass-units';
import { sentenceCase } from '../format/sentence-case';
import { bedAreaField, foldedLayers, logFields } from './bed-log-fields';
import type { StartOptions } from './start-options';

type Ask = {
  readonly container: ContainerKind;
  readonly options: StartOptions;
  readonly days: readonly ChoiceOption[];
  readonly massUnit: MassUnit;
  readonly componentRows: number;
  /** Rows for the layers of a bed, where they can be written down. */
  readonly layers?: { readonly rows: number; readonly volumeUnit: VolumeUnit };
};

/** The form of a batch: only the fields of its container kind, the first material and spawn at once, more folded. */
export async function startFields({
  container,
  options,
  days,
  massUnit,
  componentRows,
  layers,
}: Ask): Promise<FieldSpec[]> {
  const t = await getTranslations('batches');
  const words = await getTranslations('vocabulary');
  const common = await getTranslations('common');
  const units = massUnits(massUnit);
  const label = (name: Parameters<typeof t>[0]) => sentenceCase(t(name));
  const none = common('none');
  const component = (index: number): FieldSpec[] => [
    {
      kind: 'select',
      name: `components.${index}.lotId`,
      label: index === 0 ? label('fields.components.lotId') : t('furtherMaterial', { number: index + 1 }),
      options: options.lots,
      ...(index === 0 ? {} : { optional: true, emptyLabel: none }),
    },
    {
      kind: 'select',
      name: `components.${index}.treatment`,
      label: label('fields.components.treatment'),
      options: options.treatments,
      ...(index === 0 ? { hint: t('hints.treatment') } : { optional: true, emptyLabel: none }),
    },
    {
      kind: 'mass',
      name: `components.${index}.mass`,
      label: label('fields.components.mass'),
      units,
      optional: true,
    },
    {
      kind: 'radio',
      name: `components.${index}.massStage`,
      label: label('fields.components.massStage'),
      options: massStages.map((value) => ({ value, label: words(`massStage.${value}`) })),
    },
    ...(index === 0
      ? [{ kind: 'hidden', name: 'components.0.role' } as const]
      : [
          {
            kind: 'radio',
            name: `components.${index}.role`,
            label: label('fields.components.role'),
            options: componentRoles.map((value) => ({ value, label: words(`componentRole.${value}`) })),
          } as const,
        ]),
  ];
  const spawn = (index: number): FieldSpec[] => [
    {
      kind: 'select',
      name: `spawn.${index}.lotId`,
      label: index === 0 ? label('fields.spawn.lotId') : t('furtherSpawn', { number: index + 1 }),
      options: options.spawn,
      optional: true,
      emptyLabel: none,
    },
    { kind: 'mass', name: `spawn.${index}.mass`, label: label('fields.spawn.mass'), units, optional: true },
  ];
  const moisture: FieldSpec[] = [
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
  const filled: FieldSpec[] = [
    {
      kind: 'mass',
      name: 'filledMass',
      label: label('fields.filledMass'),
      hint: t('hints.filledMass'),
      units,
      optional: true,
    },
    {
      kind: 'radio',
      name: 'filledWith',
      label: label('fields.filledWith'),
      options: filledWithChoices.map((value) => ({ value, label: t(`filledWith.${value}`) })),
    },
    ...moisture,
  ];
  const own: Record<'bed' | 'log' | 'filled', FieldSpec[]> = {
    bed: [
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
        fields: filled,
      },
    ],
    log: [...(await logFields({ massUnit }, options.woods)), { kind: 'hidden', name: 'moistureSource' }],
    filled: [
      {
        kind: 'whole',
        name: 'unitCount',
        label: t(`unitCount.${container === 'bed' || container === 'log' ? 'bag' : container}`),
      },
      ...filled,
    ],
  };
  return [
    { kind: 'select', name: 'siteId', label: label('fields.siteId'), options: options.sites },
    { kind: 'select', name: 'speciesId', label: label('fields.speciesId'), options: options.species },
    { kind: 'date', name: 'inoculatedOn', label: label('fields.inoculatedOn'), quick: days },
    { kind: 'group', name: 'material', legend: t('groups.material'), fields: component(0) },
    ...own[container === 'bed' || container === 'log' ? container : 'filled'],
    { kind: 'group', name: 'spawnGroup', legend: t('groups.spawn'), fields: spawn(0) },
    {
      kind: 'group',
      name: 'moreMaterials',
      legend: t('groups.moreMaterials'),
      hint: t('hints.moreMaterials'),
      folded: true,
      fields: Array.from({ length: componentRows - 1 }, (_, row) => component(row + 1)).flat(),
    },
    { kind: 'group', name: 'moreSpawn', legend: t('groups.moreSpawn'), folded: true, fields: spawn(1) },
    { kind: 'paragraph', name: 'note', label: label('fields.note'), optional: true },
    { kind: 'hidden', name: 'containerKind' },
  ];
}
