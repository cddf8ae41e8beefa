import { getTranslations } from 'next-intl/server';
import type { Person } from '@/lib/access/actor';
import type { ChoiceOption, FieldSpec } from '../form/field-spec';
import { massUnits } from '../form/mass-units';
import { areaUnits, lengthUnits, temperatureUnits, volumeUnits } from '../form/person-units';
import { sentenceCase } from '../format/sentence-case';
import { bedBottoms, bedCovers } from './bed-sum';
import { fuelKinds } from './heat-sum';
import { type ContainerShape, measuresOf } from './volume-sum';

/** The sums of the page of sums, in the order of the work. */
export const pageSums = ['lime', 'heat', 'water', 'spawn', 'bed', 'volume'] as const;
export type PageSum = (typeof pageSums)[number];

/** The boxes of one sum. */
export async function pageSumFields(
  sum: PageSum,
  person: Pick<Person, 'massUnit' | 'temperatureUnit' | 'volumeUnit'>,
  shape: ContainerShape,
): Promise<FieldSpec[]> {
  const t = await getTranslations('sums');
  const label = (name: Parameters<typeof t>[0]) => sentenceCase(t(name));
  const mass = { kind: 'mass', units: massUnits(person.massUnit) } as const;
  const volume = { kind: 'volume', units: volumeUnits(person.volumeUnit) } as const;
  const heat = { kind: 'temperature', units: temperatureUnits(person.temperatureUnit) } as const;
  const length = { kind: 'length', units: lengthUnits(person.massUnit) } as const;
  const percent = { kind: 'decimal', suffix: '%' } as const;
  const optional = { optional: true } as const;
  const options = <V extends string>(values: readonly V[], word: (value: V) => string): ChoiceOption[] =>
    values.map((value) => ({ value, label: word(value) }));
  switch (sum) {
    case 'lime':
      return [
        { ...volume, name: 'water', label: label('fields.water') },
        {
          kind: 'decimal',
          name: 'plan.gramsPerLitre',
          label: label('fields.plan.gramsPerLitre'),
          suffix: 'g/L',
          hint: t('hints.gramsPerLitre'),
          ...optional,
        },
        { ...mass, name: 'lime', label: label('fields.lime'), hint: t('hints.limeTyped'), ...optional },
        { ...heat, name: 'plan.waterCelsius', label: label('fields.plan.waterCelsius'), ...optional },
        { kind: 'decimal', name: 'plan.ph', label: label('fields.plan.ph'), ...optional },
      ];
    case 'heat':
      return [
        { ...volume, name: 'water', label: label('fields.water') },
        { ...mass, name: 'load', label: label('fields.load'), ...optional },
        {
          ...percent,
          name: 'plan.loadMoisture',
          label: label('fields.plan.loadMoisture'),
          hint: t('hints.moisture'),
          ...optional,
        },
        { ...heat, name: 'plan.startCelsius', label: label('fields.plan.startCelsius') },
        { ...heat, name: 'plan.targetCelsius', label: label('fields.plan.targetCelsius') },
        {
          kind: 'radio',
          name: 'plan.fuel',
          label: label('fields.plan.fuel'),
          options: options(fuelKinds, (value) => sentenceCase(t(`lines.fuels.${value}`))),
        },
      ];
    case 'water':
      return [
        { ...mass, name: 'plan.wetMass', label: label('fields.plan.wetMass') },
        {
          ...percent,
          name: 'plan.fromMoisture',
          label: label('fields.plan.fromMoisture'),
          hint: t('hints.moisture'),
        },
        {
          ...percent,
          name: 'plan.targetMoisture',
          label: label('fields.plan.targetMoisture'),
          hint: t('hints.strawMoisture'),
        },
      ];
    case 'spawn':
      return [
        { kind: 'whole', name: 'unitCount', label: label('fields.unitCount') },
        { ...mass, name: 'plan.wetPerUnit', label: label('fields.plan.wetPerUnit') },
        {
          ...percent,
          name: 'plan.spawnPercent',
          label: label('fields.plan.spawnPercent'),
          hint: t('hints.spawnPercent'),
          ...optional,
        },
        { ...mass, name: 'plan.spawnLeft', label: label('fields.plan.spawnLeft'), ...optional },
      ];
    case 'bed':
      return [
        {
          kind: 'area',
          name: 'bedArea',
          label: label('fields.bedArea'),
          units: areaUnits(person.massUnit),
          hint: t('hints.area'),
          ...optional,
        },
        { ...length, name: 'plan.bedLength', label: label('fields.plan.bedLength'), ...optional },
        { ...length, name: 'plan.bedWidth', label: label('fields.plan.bedWidth'), ...optional },
        {
          kind: 'radio',
          name: 'plan.bedBottom',
          label: label('fields.plan.bedBottom'),
          options: options(bedBottoms, (value) => t(`lines.layers.${value}`)),
        },
        {
          kind: 'radio',
          name: 'plan.bedCover',
          label: label('fields.plan.bedCover'),
          options: options(bedCovers, (value) => t(`lines.layers.${value}`)),
        },
      ];
    case 'volume':
      return [
        { kind: 'hidden', name: 'shape' },
        ...measuresOf[shape].map((name): FieldSpec => ({ ...length, name, label: label(`fields.${name}`) })),
        { kind: 'whole', name: 'unitCount', label: label('fields.unitCount'), ...optional },
      ];
  }
}
