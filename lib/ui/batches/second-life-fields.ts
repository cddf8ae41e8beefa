import { getTranslations } from 'next-intl/server';
import { type ContainerKind, containerKinds } from '@/lib/growing/vocabulary';
import type { ChoiceOption, FieldSpec } from '../form/field-spec';
import { sentenceCase } from '../format/sentence-case';
import { sourceFields } from './source-fields';

type Ask = {
  readonly sites: readonly ChoiceOption[];
  readonly days: readonly ChoiceOption[];
  /** Other batches that can give units, too. */
  readonly batches: readonly ChoiceOption[];
};

const kinds = containerKinds.filter((kind): kind is Exclude<ContainerKind, 'log'> => kind !== 'log');

/** A spent batch goes on elsewhere: how many units, where, and what it is now. */
export async function secondLifeFields({ sites, days, batches }: Ask): Promise<FieldSpec[]> {
  const t = await getTranslations('batches');
  const words = await getTranslations('vocabulary.containerKind');
  const label = (name: Parameters<typeof t>[0]) => sentenceCase(t(name));
  return [
    { kind: 'whole', name: 'sources.0.units', label: label('fields.sources.units') },
    {
      kind: 'group',
      name: 'moreSources',
      legend: t('groups.moreSources'),
      folded: true,
      fields: await sourceFields(batches, [1, 2]),
    },
    { kind: 'select', name: 'siteId', label: label('fields.siteId'), options: sites },
    { kind: 'date', name: 'inoculatedOn', label: t('movedOn'), quick: days },
    {
      kind: 'radio',
      name: 'containerKind',
      label: t('secondLifeKind'),
      options: kinds.map((value) => ({ value, label: words(value) })),
    },
    { kind: 'whole', name: 'unitCount', label: label('fields.unitCount'), hint: t('hints.bedIsOne') },
    {
      kind: 'area',
      name: 'bedArea',
      label: label('fields.bedArea'),
      units: ['m2', 'ft2'].map((unit) => ({ value: unit, label: unit === 'm2' ? 'm²' : 'ft²' })),
      optional: true,
    },
    { kind: 'paragraph', name: 'note', label: label('fields.note'), optional: true },
    { kind: 'hidden', name: 'sources.0.batchId' },
    { kind: 'hidden', name: 'speciesId' },
    { kind: 'hidden', name: 'moistureSource' },
    { kind: 'hidden', name: 'id' },
  ];
}
