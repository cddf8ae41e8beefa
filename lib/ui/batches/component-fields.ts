import { getTranslations } from 'next-intl/server';
import type { MassUnit } from '@/lib/database/generated/enums';
import { componentRoles } from '@/lib/growing/vocabulary';
import { massStages } from '@/lib/records/batch/batch-fields.input';
import type { FieldSpec } from '../form/field-spec';
import { massUnits } from '../form/mass-units';
import { sentenceCase } from '../format/sentence-case';
import type { StartOptions } from './start-options';

/** One material of a batch: how it was treated, its lot, its mass; the first is the substrate, further ones say what for. */
export async function componentFields(
  index: number,
  options: Pick<StartOptions, 'lots' | 'treatments'>,
  massUnit: MassUnit,
): Promise<FieldSpec[]> {
  const t = await getTranslations('batches');
  const words = await getTranslations('vocabulary');
  const none = (await getTranslations('common'))('none');
  const label = (name: Parameters<typeof t>[0]) => sentenceCase(t(name));
  const first = index === 0;
  return [
    {
      kind: 'select',
      name: `components.${index}.treatment`,
      label: first ? label('fields.components.treatment') : t('furtherTreatment', { number: index + 1 }),
      options: options.treatments,
      ...(first ? { hint: t('hints.treatment') } : { optional: true, emptyLabel: none }),
    },
    {
      kind: 'select',
      name: `components.${index}.lotId`,
      label: first ? label('fields.components.lotId') : t('furtherMaterial', { number: index + 1 }),
      options: options.lots,
      ...(first ? {} : { optional: true, emptyLabel: none }),
    },
    {
      kind: 'mass',
      name: `components.${index}.mass`,
      label: label('fields.components.mass'),
      units: massUnits(massUnit),
      optional: true,
    },
    {
      kind: 'radio',
      name: `components.${index}.massStage`,
      label: label('fields.components.massStage'),
      options: massStages.map((value) => ({ value, label: words(`massStage.${value}`) })),
    },
    first
      ? { kind: 'hidden', name: 'components.0.role' }
      : {
          kind: 'radio',
          name: `components.${index}.role`,
          label: label('fields.components.role'),
          options: componentRoles.map((value) => ({ value, label: words(`componentRole.${value}`) })),
        },
  ];
}

/** One spawn lot of a batch and how much of it. */
export async function spawnFields(
  index: number,
  options: Pick<StartOptions, 'spawn'>,
  massUnit: MassUnit,
): Promise<FieldSpec[]> {
  const t = await getTranslations('batches');
  const none = (await getTranslations('common'))('none');
  return [
    {
      kind: 'select',
      name: `spawn.${index}.lotId`,
      label: index === 0 ? sentenceCase(t('fields.spawn.lotId')) : t('furtherSpawn', { number: index + 1 }),
      options: options.spawn,
      optional: true,
      emptyLabel: none,
    },
    {
      kind: 'mass',
      name: `spawn.${index}.mass`,
      label: sentenceCase(t('fields.spawn.mass')),
      units: massUnits(massUnit),
      optional: true,
    },
  ];
}
